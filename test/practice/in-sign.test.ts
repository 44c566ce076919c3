import { describe, expect, it } from 'vitest';
import { inSign } from '../../src/practice/in-sign.ts';
import { type ShownSitting, shown } from '../../src/practice/shown.ts';
import { bankQuestions } from '../../src/questions/bank/index.ts';
import { mark } from '../../src/questions/bank/mark.ts';
import { MISCONCEPTIONS } from '../../src/questions/bank/misconceptions.ts';
import { shownText } from '../../src/text/shown-text.ts';
import { sittingsOf, textsOf } from '../questions/bank/all.ts';
import { proofOf } from '../questions/bank/prove-line.ts';

const questions = bankQuestions().map((question) => [question.id, question] as const);
/** Every twentieth of the two hundred: the letters are the same, only the numbers differ. */
const some = (id: string): readonly ShownSitting[] =>
  sittingsOf(questions.find(([one]) => one === id)?.[1] ?? never()).flatMap((sitting, at) =>
    at % 20 === 0 ? [shown(sitting)] : [],
  );
const never = (): never => {
  throw new Error('wish a question');
};
const lettersOf = ({ drawing }: ShownSitting): readonly string[] =>
  drawing?.letters.map(({ text }) => text) ?? [];
const typedAnswer = ({ payload }: ShownSitting): string => (payload.kind === 'typed' ? payload.answer : '');
/** All that a reader sees of a question before a mark; the answer that may be typed is looked at by itself. */
const seenTexts = (sitting: ShownSitting): readonly string[] => {
  const { stem, worked, right, payload } = sitting;
  const options = payload.kind === 'choice' ? payload.options.map(({ text }) => text) : [];
  const places = payload.kind === 'place' ? payload.places.map(({ words }) => words) : [];
  const items = payload.kind === 'order' ? payload.items.map(({ text }) => text) : [];
  const within = payload.kind === 'typed' ? [payload.within] : [];
  return [stem, ...worked, right, ...options, ...places, ...items, ...within, ...lettersOf(sitting)];
};
const stemAndItems = (sitting: ShownSitting): string => {
  const { payload, stem } = sitting;
  if (payload.kind === 'order') return [stem, ...payload.items.map(({ text }) => text)].join('; ');
  if (payload.kind !== 'place') return stem;
  const places = payload.places.map(({ words }) => words);
  return [stem, ...places, ...lettersOf(sitting), JSON.stringify(payload.figure)].join('; ');
};
const backToPoint = (text: string): string => text.replaceAll(/(?<=\d),(?=\d)/g, '.');

describe.each(questions)('%s with a comma', (id) => {
  const all = some(id).map((point) => ({ point, comma: inSign(point, 'comma') }));

  it('has the same numbers in the same words, and no point in any', () => {
    for (const { point, comma } of all) {
      const [before, after] = [seenTexts(point), seenTexts(comma)];
      expect(after.map(backToPoint)).toEqual(before.map(backToPoint));
      for (const text of after) expect(text.replace(/No\. [\d.]+/g, '')).not.toMatch(/\d\.\d/);
    }
  });

  it('has a solution of which a pocket calculator with a comma proves as much', () => {
    for (const { point, comma } of all) {
      // that it holds with a point is proved for all seeds elsewhere
      const [before, after] = [point, comma].map((one) => proofOf(stemAndItems(one), one.worked));
      expect(after?.proved).toBe(before?.proved);
      expect(after?.faults.map(backToPoint)).toEqual(before?.faults);
    }
  });

  it('is marked as it was drawn, and its answer can be typed as it is shown', () => {
    for (const { point, comma } of all) {
      if (point.payload.kind !== 'typed') continue;
      expect(typedAnswer(comma)).not.toMatch(/\d\.\d/);
      expect(backToPoint(typedAnswer(comma)), 'with as many digits').toBe(typedAnswer(point));
      expect(mark(point, typedAnswer(comma))).toEqual(mark(point, typedAnswer(point)));
      expect(mark(point, typedAnswer(comma)).outcome).toBe('right');
    }
  });

  it('is itself with a point', () => {
    for (const { point } of all) expect(inSign(point, 'point')).toBe(point);
  });
});

describe('replies', () => {
  it('take the sign where they are shown, each number in them', () => {
    const replies = [
      ...Object.values(MISCONCEPTIONS).map(({ reply }) => reply),
      ...questions.flatMap(([id]) => some(id).slice(0, 5).flatMap(textsOf)),
    ];
    expect(replies.filter((text) => /\d\.\d/.test(text)).length).toBeGreaterThan(100);
    for (const text of replies) {
      const comma = shownText(text, 'comma');
      expect(comma.replace(/No\. [\d.]+/g, '')).not.toMatch(/\d\.\d/);
      expect(backToPoint(comma)).toBe(text);
    }
  });
});
