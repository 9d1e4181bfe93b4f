// The words of a command line: its flags with their values, and what is left over.
import { parseArgs } from 'node:util';
import { say } from '../words/say';
import { CommandError } from './planText';

/** `text`: a value follows, after a blank or an equals sign; `flag`: none does, but one may stand after an equals sign. */
export type Flags<Name extends string> = Readonly<Record<Name, 'text' | 'flag'>>;

export interface CommandLine<Name extends string> {
  /** what each flag that was given says; of one given twice, the last; empty where a value is missing */
  flags: Partial<Record<Name | 'help', { value: string; at: number }>>;
  rest: { word: string; at: number }[];
}

/** Reads the words of a command line; every command knows --help and -h. @throws CommandError with exit code 2 where a flag is not known */
export function readCommandLine<Name extends string>(words: readonly string[], known: Flags<Name>): CommandLine<Name> {
  const kinds: Readonly<Record<string, 'text' | 'flag' | undefined>> = { ...known, help: 'flag' };
  const options = Object.fromEntries(
    Object.entries(kinds).map(([name, kind]) => [
      name,
      { type: kind === 'text' ? ('string' as const) : ('boolean' as const), ...(name === 'help' ? { short: 'h' } : {}) },
    ]),
  );
  const { tokens } = parseArgs({ args: [...words], options, strict: false, allowPositionals: true, tokens: true });
  const line: CommandLine<Name> = { flags: {}, rest: [] };
  for (const token of tokens) {
    if (token.kind === 'positional') line.rest.push({ word: token.value, at: token.index });
    if (token.kind !== 'option') continue;
    if (!Object.hasOwn(kinds, token.name))
      throw new CommandError(say('command.option', { got: token.rawName, names: Object.keys(known).map((name) => `--${name}`) }), 2);
    line.flags[token.name as Name] = { value: token.value ?? '', at: token.index };
  }
  return line;
}
