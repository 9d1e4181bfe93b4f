// What an address asks for.
import { describe, expect, it } from 'vitest';
import { addressOfFile, addressOfNumber, askedBy } from '../../../src/page/state/common/address';

const PAGE = 'https://school.example/water/index.html?x=1#lesson=03';

describe('an address', () => {
  it.each([
    ['', { kind: 'start' }],
    ['#', { kind: 'start' }],
    ['#lesson=07', { kind: 'number', number: '07' }],
    ['#lesson=7', { kind: 'number', number: '07' }],
    ['#lesson=%207', { kind: 'number', number: '07' }],
    ['#lesson=16', { kind: 'number', number: '16' }],
    ['#lesson=own/roots.json', { kind: 'web', url: 'https://school.example/water/own/roots.json' }],
    ['#lesson=https://else.example/a.json?v=2', { kind: 'web', url: 'https://else.example/a.json?v=2' }],
    ['#lesson=https%3A%2F%2Felse.example%2Fa%20b.json', { kind: 'web', url: 'https://else.example/a%20b.json' }],
    ['#lesson=http://else.example/a.json', { kind: 'refused', what: 'http://else.example/a.json' }],
    ['#lesson=javascript:alert(1)', { kind: 'refused', what: 'javascript:alert(1)' }],
    ['#lesson=data:application/json,{}', { kind: 'refused', what: 'data:application/json,{}' }],
    ['#lesson=file:///etc/passwd', { kind: 'refused', what: 'file:///etc/passwd' }],
    ['#lesson=', { kind: 'refused', what: '' }],
    ['#file=my%20lesson.json', { kind: 'file', name: 'my lesson.json' }],
    ['#lesson=%E0%A4%A', { kind: 'web', url: 'https://school.example/water/%E0%A4%A' }],
    ['#main', { kind: 'other' }],
    ['#lesson', { kind: 'other' }],
  ])('%s', (hash, asked) => {
    expect(askedBy(hash, PAGE)).toEqual(asked);
  });

  it("by http is taken beside a page that came by http, as on one's own machine", () => {
    expect(askedBy('#lesson=a.json', 'http://localhost:4173/')).toEqual({ kind: 'web', url: 'http://localhost:4173/a.json' });
  });

  it('is written as it is read', () => {
    expect(askedBy(addressOfNumber('07'), PAGE)).toEqual({ kind: 'number', number: '07' });
    expect(askedBy(addressOfFile('Å & b=c.json'), PAGE)).toEqual({ kind: 'file', name: 'Å & b=c.json' });
  });
});
