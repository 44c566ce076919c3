import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Answers } from '../../src/practice/answers.ts';
import { readAnswers } from '../../src/practice/progress-files.ts';

const saved = vi.hoisted(() => ({ files: [] as { name: string; content: string | Blob; type: string }[] }));
vi.mock('../../src/exchange/save-file.ts', () => ({
  saveFile: (file: { name: string; content: string | Blob; type: string }) => saved.files.push(file),
}));
const { saveAnswers } = await import('../../src/practice/progress-files.ts');

afterEach(() => {
  saved.files.length = 0;
});

const answers: Answers = new Map([
  ['order-of-levels', [{ at: '2031-05-04T10:00:00.000Z', seed: 3, grade: 'unsure', mistake: '' }]],
  [
    'point-at-ratio',
    [
      { at: '2031-05-04T10:00:00.000Z', seed: 1, grade: 'wrong', mistake: 'ten-per-doubling' },
      { at: '2031-05-05T10:00:00.000Z', seed: 2, grade: 'right', mistake: '' },
    ],
  ],
]);

const chosen = (text: string): Pick<File, 'size' | 'arrayBuffer'> => {
  const bytes = new TextEncoder().encode(text);
  return { size: bytes.length, arrayBuffer: async () => bytes.slice().buffer };
};

describe('answers as a file', () => {
  it('have a name that says what they are and of which day', () => {
    expect(saveAnswers(answers, new Date('2031-05-06T08:00:00.000Z'))).toBeUndefined();
    expect(saved.files.map(({ name, type }) => [name, type])).toEqual([
      ['practice-2031-05-06.json', 'application/json'],
    ]);
  });

  it('come back as they were', async () => {
    saveAnswers(answers, new Date('2031-05-06T08:00:00.000Z'));
    const text = String(saved.files[0]?.content);
    expect(await readAnswers(chosen(text))).toEqual({ ok: true, answers, notes: [] });
  });

  it('leave out what stands at its usual value', () => {
    saveAnswers(answers, new Date('2031-05-06T08:00:00.000Z'));
    const { practice } = JSON.parse(String(saved.files[0]?.content)) as { practice: { answers: object[] }[] };
    expect(practice[1]?.answers).toEqual([
      { at: '2031-05-04T10:00:00.000Z', grade: 'wrong', mistake: 'ten-per-doubling' },
      { at: '2031-05-05T10:00:00.000Z', seed: 2 },
    ]);
  });
});

describe('a file that was chosen', () => {
  it('as large as a film is not even read', async () => {
    const arrayBuffer = vi.fn();
    const read = await readAnswers({ size: 700_000_000, arrayBuffer });
    expect(read).toMatchObject({ ok: false, problem: expect.stringContaining('Nothing was changed') });
    expect(arrayBuffer).not.toHaveBeenCalled();
  });

  it('that the browser cannot read is told', async () => {
    const read = await readAnswers({ size: 3, arrayBuffer: () => Promise.reject(new Error('gone')) });
    expect(read).toEqual({ ok: false, problem: 'The browser could not read this file.' });
  });

  it('of another kind is told by its kind', async () => {
    expect(await readAnswers(chosen('%PDF-1.7'))).toMatchObject({
      ok: false,
      problem: expect.stringContaining('a PDF document'),
    });
  });
});
