import type { Survivor } from './survivors.ts';

/** One change to the sources, as the instrumenter names it; lines and columns count from 0. */
export interface Mutant {
  readonly id: number;
  readonly file: string;
  readonly mutatorName: string;
  readonly replacement: string;
  readonly location: { readonly start: Place; readonly end: Place };
}

interface Place {
  readonly line: number;
  readonly column: number;
}

/**
 * What became of it. `hung`: it went round for ever, which is noticed. `constant`: only loading the module reaches it,
 * before a switch can be turned, so it is not tried.
 */
export type Status = 'killed' | 'hung' | 'survived' | 'unreached' | 'constant';

export interface Judged extends Mutant {
  readonly status: Status;
  /** What it stands in for. */
  readonly original: string;
  /** Why no test of what the reader sees can tell it from the original, if that is known. */
  readonly reason?: string;
}

/** What was found in one file, and the commit at which: files may be run one by one. */
export interface FileReport {
  readonly commit: string;
  readonly mutants: readonly Judged[];
}

/** Text on one line. */
export const inOneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();

function offsetIn(text: string, { line, column }: Place): number {
  const before = text.split('\n').slice(0, line);
  return before.reduce((sum, each) => sum + each.length + 1, column);
}

/** Where in a source the mutant lies, in characters from its start. */
export const spanOf = ({ location }: Mutant, text: string): { from: number; to: number } => ({
  from: offsetIn(text, location.start),
  to: offsetIn(text, location.end),
});

/** The entry of the list that explains this mutant: it lies within the snippet and its replacement is named. */
export function explanationOf(
  mutant: Mutant,
  text: string,
  survivors: readonly Survivor[],
): Survivor | undefined {
  const { from, to } = spanOf(mutant, text);
  const replacement = inOneLine(mutant.replacement);
  return survivors.find(({ file, within, to: replacements }) => {
    const start = text.indexOf(within);
    const inside = start >= 0 && from >= start && to <= start + within.length;
    return file === mutant.file && inside && replacements.includes(replacement);
  });
}
