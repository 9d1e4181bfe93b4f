// What a page in the made-up language may show: every text marked at both ends but numbers, units, names of files and a lesson's own words;
// nothing cut off.
import { readdirSync, readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { FORMATS } from '../../src/words/formats';
import { CLOSES, OPENS, pseudoText } from '../../src/words/pseudo';

const LEVELS = new URL('../../levels/', import.meta.url);
const texts = readdirSync(LEVELS)
  .filter((name) => /^\d\d-.*\.json$/.test(name))
  .map((name) => readFileSync(new URL(name, LEVELS), 'utf8'));
/** All that lessons say, in one text. */
const LESSONS = texts.join('\n').replace(/\\"/g, '"');
/** Units as they stand behind numbers; longest first, so that none leaves its tail. */
const UNITS = [
  ...new Set([
    ...Object.values(FORMATS).flatMap(({ unit, us }) => [unit, us?.unit ?? '']),
    'mg',
    'kg',
    'meq/L',
    'g N',
    'g COD',
    'mm',
    'min',
  ]),
]
  .filter(Boolean)
  .sort((a, b) => b.length - a.length);

/** A word that comes from no catalogue and no lesson, or null. */
function foreign(text: string): string | null {
  const told = text.replace(/[\s\u00a0]+/g, ' ').trim();
  if (!/\p{L}{2,}/u.test(told) || LESSONS.includes(told)) return null;
  const without = UNITS.reduce((rest, unit) => rest.replaceAll(unit, ' '), told).replace(/[\d.,–−<>×%·:;()“”"?!→]+/g, ' ');
  // what is left stands in a lesson, sentence by sentence
  const parts = told
    .split(/(?<=[.?!:])\s|·|;/)
    .map((part) => part.trim())
    .filter((part) => /\p{L}{2,}/u.test(part));
  return !/\p{L}{2,}/u.test(without) || parts.every((part) => LESSONS.includes(part)) ? null : told;
}

/** Words that stand outside all marks: of text nodes in the order of the page, and of each attribute that is read aloud or shown. */
export async function unmarked(page: Page): Promise<string[]> {
  const outside = await page.evaluate(
    ([opens, closes]) => {
      const found: string[] = [];
      let depth = 0;
      const beyond = (text: string): string => {
        let rest = '';
        for (const sign of text) {
          if (sign === opens) depth += 1;
          if (depth === 0) rest += sign;
          if (sign === closes) depth -= 1;
        }
        return rest;
      };
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      while (walker.nextNode()) {
        const node = walker.currentNode;
        if (node.parentElement?.closest('script, style') === null) found.push(beyond(node.textContent ?? ''));
      }
      if (depth !== 0) found.push(`marks that do not match (${depth})`);
      for (const element of document.body.querySelectorAll('*')) {
        for (const name of ['aria-label', 'aria-valuetext', 'title', 'alt', 'placeholder']) {
          depth = 0;
          found.push(beyond(element.getAttribute(name) ?? ''));
        }
      }
      return found;
    },
    [OPENS, CLOSES] as const,
  );
  return [...new Set(outside.map(foreign).filter((words) => words !== null))];
}

/**
 * Visible text that a clipping box cuts, that leaves the button, cell or card it stands in, or that no scrolling brings onto the page;
 * buttons that stand out of their bar. Where a closed choice has no room for a name, dots must tell so: opened, it shows it whole.
 */
export async function cutOff(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const BOX =
      'button, .btn, th, td, .card, label, summary, legend, .hint, .brief, .tint, .season-bar, .season-hand, .build-bar, .choice, .step-bar';
    const found = new Set<string>();
    const top = document.querySelector('dialog[open]') ?? document.body;
    const walker = document.createTreeWalker(top, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const node = walker.currentNode;
      const holder = node.parentElement;
      if (
        holder === null
        || (node.textContent ?? '').trim() === ''
        || holder.closest('script, style, option, .hidden, [hidden], [inert], [aria-hidden="true"]') !== null
        || !holder.checkVisibility()
      )
        continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const rects = [...range.getClientRects()].filter((rect) => rect.width > 0.5);
      if (rects.length === 0) continue;
      const [left, right] = [Math.min(...rects.map((one) => one.left)), Math.max(...rects.map((one) => one.right))];
      const [high, low] = [Math.min(...rects.map((one) => one.top)), Math.max(...rects.map((one) => one.bottom))];
      const say = (what: string, box: Element): void => {
        found.add(
          `${what} ${box.tagName.toLowerCase()}.${String(box.getAttribute('class') ?? '')}: "${(node.textContent ?? '').trim().slice(0, 50)}"`,
        );
      };
      let scrolls = { x: false, y: false };
      for (let above: Element | null = holder; above !== null && above !== document.documentElement; above = above.parentElement) {
        const style = getComputedStyle(above);
        const rect = above.getBoundingClientRect();
        if (!scrolls.x && above.matches(BOX) && (left < rect.left - 2 || right > rect.right + 2)) say('leaves', above);
        const clips = (how: string): boolean => how === 'hidden' || how === 'clip';
        if (!scrolls.x && clips(style.overflowX) && (left < rect.left - 2 || right > rect.right + 2)) say('cut by', above);
        // letters stand in a line that is higher than they are
        if (!scrolls.y && clips(style.overflowY) && (high < rect.top - 4 || low > rect.bottom + 4)) say('cut by', above);
        const scroller = (how: string): boolean => how === 'auto' || how === 'scroll';
        scrolls = { x: scrolls.x || scroller(style.overflowX), y: scrolls.y || scroller(style.overflowY) };
        if (style.position === 'fixed') break;
      }
      if (!scrolls.x && (left < -2 || right > innerWidth + 2)) say('off the page in', holder);
      if (!scrolls.y && (high < -2 || low > innerHeight + 2)) say('off the page in', holder);
    }
    for (const button of top.querySelectorAll('button')) {
      const bar = button.closest('.brief, .tint, .bottom');
      if (bar === null || !button.checkVisibility() || button.closest('dialog, [popover], [hidden], [inert], .scroll') !== null) continue;
      const [inner, outer] = [button.getBoundingClientRect(), bar.getBoundingClientRect()];
      if (inner.top < outer.top - 2 || inner.bottom > outer.bottom + 2 || inner.left < outer.left - 2 || inner.right > outer.right + 2)
        found.add(`out of ${String(bar.getAttribute('class'))}: button "${(button.textContent || button.ariaLabel) ?? ''}"`);
    }
    const pen = document.createElement('canvas').getContext('2d');
    for (const choice of top.querySelectorAll('select')) {
      if (pen === null || !choice.checkVisibility()) continue;
      const style = getComputedStyle(choice);
      pen.font = style.font;
      const words = choice.selectedOptions[0]?.text ?? '';
      const room = choice.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
      if (pen.measureText(words).width > room && style.textOverflow !== 'ellipsis') found.add(`no room in a choice: "${words}"`);
    }
    return [...found];
  });
}

/** Remembers all that is written into the picture from now on. */
export async function watchPicture(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const drawn = new Set<string>();
    Object.assign(window, { drawnWords: drawn });
    const write = CanvasRenderingContext2D.prototype.fillText;
    CanvasRenderingContext2D.prototype.fillText = function fillText(words, ...place) {
      drawn.add(words);
      write.call(this, words, ...place);
    };
  });
}

const MARKED_LETTERS = new Set([...pseudoText('aceginosuyzACEINOSUYZ')].filter((sign) => sign > '\u007f'));

/**
 * Words written into the picture that the made-up language has not touched. Long ones stand in several lines, so that not every line bears
 * a mark.
 */
export async function unmarkedInPicture(page: Page): Promise<string[]> {
  const drawn = await page.evaluate(() => [...(window as unknown as { drawnWords: Set<string> }).drawnWords]);
  return drawn.filter((words) => foreign(words) !== null && ![...words].some((sign) => MARKED_LETTERS.has(sign)));
}
