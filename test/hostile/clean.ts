import { expect } from 'vitest';
import { cleanLines } from '../../src/address/text-code.ts';
import { cleanText } from '../../src/text/clean.ts';

/** Every text within a value. */
export function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsIn);
}

/** Longest sentence that a page has room for. */
const LONGEST_TOLD = 400;

/** Checks that nothing in it can disturb the text around it, and that no object has got a key that all objects share. */
export function expectClean(value: unknown): void {
  for (const text of textsIn(value)) expect(cleanLines(text)).toBe(text);
  expect(Object.keys(Object.prototype)).toEqual([]);
  expect(({} as { ran?: unknown }).ran).toBeUndefined();
}

/** Checks that what is told are sentences that can be shown. */
export function expectTold(sentences: readonly string[]): void {
  for (const sentence of sentences) {
    expect(sentence).toMatch(/^.+[.:]$/su);
    expect(sentence.length).toBeLessThanOrEqual(LONGEST_TOLD);
    expect(cleanText(sentence)).toBe(sentence.replace(/\s/gu, ' '));
  }
}
