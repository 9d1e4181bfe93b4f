// Progress kept on the device: best marks stay, broken data is no fault, a closed storage neither.
import { describe, expect, it } from 'vitest';
import { forgetful, keptIn } from '../../../src/page/state/common/device';
import { keepSeason, progressIn, readProgress, withSeason } from '../../../src/page/state/path/progress';

const kept = (lessons: unknown): string => JSON.stringify({ format: 'loopwright.progress/1', lessons });

describe('progress', () => {
  it('keeps the best marks and the day of the last season', () => {
    const once = withSeason({}, 'a', 2, '2026-11-01');
    expect(withSeason(once, 'a', 1, '2026-11-02')).toEqual({ a: { marks: 2, played: '2026-11-02' } });
    expect(withSeason(once, 'a', 3, '2026-11-02').a.marks).toBe(3);
    expect(withSeason(once, 'b', 0, '2026-11-03')).toEqual({
      a: { marks: 2, played: '2026-11-01' },
      b: { marks: 0, played: '2026-11-03' },
    });
  });

  it('takes a lesson named like something every object has for a lesson', () => {
    expect(withSeason({}, 'constructor', 1, '2026-11-01')).toEqual({ constructor: { marks: 1, played: '2026-11-01' } });
  });

  it('is read back from the device, with what another page added in the meantime', () => {
    const device = forgetful();
    keepSeason(device, 'a', 1, '2026-11-01');
    device.write('loopwright.progress', kept({ a: { marks: 1, played: '2026-11-01' }, other: { marks: 3, played: '2026-10-30' } }));
    expect(keepSeason(device, 'a', 2, '2026-11-02')).toEqual({
      a: { marks: 2, played: '2026-11-02' },
      other: { marks: 3, played: '2026-10-30' },
    });
    expect(readProgress(device).other.marks).toBe(3);
  });

  it.each([
    [null],
    [''],
    ['{'],
    ['null'],
    ['[]'],
    ['{"format":"loopwright.progress/9","lessons":{"a":{"marks":1,"played":"2026-11-01"}}}'],
    [kept([])],
    [kept(null)],
  ])('is none in %s', (text) => {
    expect(progressIn(text)).toEqual({});
  });

  it('passes over what makes no sense and keeps the rest', () => {
    expect(
      progressIn(
        kept({
          a: { marks: 4, played: '2026-11-01' },
          b: { marks: 1.5, played: '2026-11-01' },
          c: { marks: 1, played: 'today' },
          d: 3,
          e: { marks: 1, played: '2026-11-01', more: 1 },
        }),
      ),
    ).toEqual({ e: { marks: 1, played: '2026-11-01' } });
  });
});

describe('the device', () => {
  it('keeps in memory what the storage refuses, and in the storage what it takes', () => {
    const texts = new Map<string, string>();
    let full = true;
    const device = keptIn(() => ({
      getItem: (name) => texts.get(name) ?? null,
      setItem: (name, text) => {
        if (full) throw new Error('full');
        texts.set(name, text);
      },
    }));
    device.write('a', '1');
    expect([device.read('a'), texts.get('a')]).toEqual(['1', undefined]);
    full = false;
    device.write('a', '2');
    expect([device.read('a'), texts.get('a')]).toEqual(['2', '2']);
    texts.set('a', 'by another page');
    expect(device.read('a')).toBe('by another page');
  });

  it('lives with a storage that may not even be asked for', () => {
    const device = keptIn(() => {
      throw new Error('closed');
    });
    expect(device.read('a')).toBeNull();
    device.write('a', '1');
    expect(device.read('a')).toBe('1');
  });
});
