import { describe, expect, it } from 'vitest';
import { MOST_PARTS } from '../../src/stage/talk.ts';
import { talkAsFile, talkInFile } from '../../src/stage/talk-file.ts';

const saved = '2026-02-03T04:05:06.000Z';
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const fileOf = (parts: readonly string[]): string => {
  const written = talkAsFile(parts, saved);
  if (!written.ok) throw new Error(written.problem);
  return written.text;
};

describe('a file of a talk', () => {
  it('gives the same talk back', () => {
    const parts = ['decibels.halves.guess', 'examples.two-pads.answer', 'decibels.halves.guess'];
    expect(talkInFile(bytes(fileOf(parts)))).toEqual({ ok: true, parts });
  });

  it('stays as it is written today', () => {
    expect(JSON.parse(fileOf(['decibels.halves.guess']))).toEqual({
      file: 'how-sure-is-a-watt',
      version: 1,
      saved,
      steps: [{ part: 'decibels.halves.guess' }],
    });
  });

  it('is taken whole or not at all, with a sentence on what is wrong', () => {
    const odd = talkInFile(bytes(fileOf(['decibels.halves.guess']).replace('halves', '../halves')));
    expect(odd).toMatchObject({ ok: false, problem: expect.stringContaining('is no step of a talk') });
    const many = Array.from({ length: MOST_PARTS + 1 }, () => 'a.b.c');
    expect(talkInFile(bytes(fileOf(many)))).toMatchObject({
      ok: false,
      problem: expect.stringContaining(String(MOST_PARTS)),
    });
  });

  it.each([
    '',
    '{',
    '[]',
    '{"file":"something else"}',
    '{"file":"how-sure-is-a-watt","version":9,"steps":[]}',
  ])('is not %j', (text) => expect(talkInFile(bytes(text)).ok).toBe(false));
});
