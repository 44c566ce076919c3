import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Answers } from '../../src/practice/answers.ts';
import { begunOf } from '../../src/practice/begun-paper.ts';
import { leftPapers } from '../../src/practice/left-papers.ts';
import { addPapers, readAnswers } from '../../src/practice/progress-files.ts';
import { keepPaper, lyingPapers } from '../../src/store/begun.ts';
import { refusing, storage } from '../store/any-storage.ts';
import { allSittings, orderSitting, typedSitting } from './sittings.ts';

const saved = vi.hoisted(() => ({ files: [] as { name: string; content: string | Blob; type: string }[] }));
vi.mock('../../src/exchange/save-file.ts', () => ({
  saveFile: (file: { name: string; content: string | Blob; type: string }) => saved.files.push(file),
}));
const { saveAnswers } = await import('../../src/practice/progress-files.ts');

beforeEach(() => {
  vi.stubGlobal('localStorage', storage());
});
afterEach(() => {
  vi.unstubAllGlobals();
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
    expect(await readAnswers(chosen(text))).toEqual({ ok: true, answers, papers: [], notes: [] });
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

describe('papers that are not handed in', () => {
  const paper = begunOf(
    {
      sittings: allSittings,
      given: new Map<string, string | readonly string[]>([
        [typedSitting.id, '7,0 dBm'],
        [orderSitting.id, ['one', 'two', 'three']],
      ]),
      begunMs: 0,
      hasClock: true,
      handed: undefined,
    },
    { seed: 7, length: 5, topics: '' },
    90_000,
  );
  const kept = { id: 'a1', text: JSON.stringify(paper) };
  const savedText = (): string => {
    expect(saveAnswers(new Map(), new Date('2031-05-06T08:00:00.000Z'))).toBeUndefined();
    return String(saved.files.at(-1)?.content);
  };

  it('go into the file, and come back from it into a browser that has none', async () => {
    keepPaper(kept, undefined);
    const text = savedText();
    vi.stubGlobal('localStorage', storage());
    const read = await readAnswers(chosen(text));
    expect(addPapers(read.ok ? read.papers : [])).toEqual(['1 mock paper that is not handed in was added.']);
    expect(leftPapers()).toEqual({ left: [{ id: 'a1', text: kept.text, paper }], unreadable: 0 });
  });

  it('stay as they are here where the file has them as well, and are told', () => {
    keepPaper({ ...kept, text: 'gone on with' }, undefined);
    expect(addPapers([{ id: 'a1', paper }])).toEqual([
      '1 mock paper of the file is here already, and stays as it is here.',
    ]);
    expect(lyingPapers()).toEqual([{ id: 'a1', text: 'gone on with' }]);
  });

  it('that cannot be read stay out of the file and where they lie', () => {
    keepPaper({ id: 'b2', text: '{' }, undefined);
    expect(JSON.parse(savedText())).not.toHaveProperty('papers');
    expect(lyingPapers()).toEqual([{ id: 'b2', text: '{' }]);
  });

  it('that the browser refuses are told', () => {
    vi.stubGlobal('localStorage', refusing);
    expect(addPapers([{ id: 'a1', paper }])).toEqual([
      '1 mock paper could not be kept: the browser refuses.',
    ]);
  });
});
