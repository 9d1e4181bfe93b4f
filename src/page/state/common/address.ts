// What an address asks for: #lesson=07, #lesson=<address of a file>, or #file=<name>, which stands for a file opened by hand.

export type Asked =
  /** the plain page: the first lesson of the path */
  | { kind: 'start' }
  | { kind: 'number'; number: string }
  | { kind: 'web'; url: string }
  | { kind: 'file'; name: string }
  /** a file that may not be fetched: neither beside the page nor by https */
  | { kind: 'refused'; what: string }
  /** something that is none of the path's business */
  | { kind: 'other' };

export const addressOfNumber = (number: string): string => `#lesson=${number}`;
export const addressOfFile = (name: string): string => `#file=${encodeURIComponent(name)}`;

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/**
 * @param hash of the page's address, with its #
 * @param page the page's own address; addresses of files are taken relative to it
 */
export function askedBy(hash: string, page: string): Asked {
  if (hash === '' || hash === '#') return { kind: 'start' };
  const found = /^#(lesson|file)=(.*)$/s.exec(hash);
  if (found === null) return { kind: 'other' };
  const what = decoded(found[2]).trim();
  if (found[1] === 'file') return { kind: 'file', name: what };
  if (/^\d{1,2}$/.test(what)) return { kind: 'number', number: what.padStart(2, '0') };
  if (what === '' || !URL.canParse(what, page)) return { kind: 'refused', what };
  const url = new URL(what, page);
  return url.protocol === 'https:' || (url.origin === new URL(page).origin && url.protocol === 'http:')
    ? { kind: 'web', url: url.href }
    : { kind: 'refused', what };
}
