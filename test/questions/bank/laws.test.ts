import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { placesOf } from '../../../src/questions/bank/figure.ts';
import { BANK, bankQuestion, bankQuestions } from '../../../src/questions/bank/index.ts';
import { MISCONCEPTIONS } from '../../../src/questions/bank/misconceptions.ts';
import { sitting } from '../../../src/questions/bank/sitting.ts';
import { TOPICS } from '../../../src/questions/bank/topics.ts';
import type { Sitting } from '../../../src/questions/bank/types.ts';
import { answerText, hasNumbers, numbered, SEEDS, sittingsOf, textsOf, worded } from './all.ts';

const questions = bankQuestions();
const each = questions.map((question) => [question.id, question] as const);
/** Clauses of CEPT T/R 61-02 (16 February 2024), annex 6, part a, that bear on power and its measurement. */
const CLAUSES = [
  '1.1',
  '1.2',
  '1.6',
  '1.7',
  '1.9',
  '1.10',
  '3.1',
  '3.4',
  '4.3',
  '4.4',
  '5.4',
  '6.2',
  '6.3',
  '7',
  '8.1',
  '8.2',
  '10',
];
const lesson = (id: string): boolean => existsSync(`src/lessons/${id}.mdx`);

/** Ids of the mistakes that a sitting knows. */
function mistakesOf({ payload }: Sitting): readonly (string | undefined)[] {
  if (payload.kind === 'order') return [payload.otherwise.misconception];
  const all =
    payload.kind === 'choice' ? payload.options : payload.kind === 'typed' ? payload.near : payload.places;
  return all.map(({ misconception }) => misconception);
}

describe('the bank', () => {
  it('has at least 80 questions with numbers and 60 on words, in ten topics of about equal size', () => {
    expect(numbered().length).toBeGreaterThanOrEqual(80);
    expect(worded().length).toBeGreaterThanOrEqual(60);
    expect(Object.keys(BANK).sort()).toEqual(Object.keys(TOPICS).sort());
    for (const [topic, list] of Object.entries(BANK)) {
      expect(list.length, topic).toBeGreaterThanOrEqual(14);
      expect(list.every((question) => question.topic === topic)).toBe(true);
    }
  });

  it('has each kind of answer and each difficulty in every topic but few', () => {
    const kinds = new Set(questions.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(['choice', 'order', 'place', 'typed']);
    for (const list of Object.values(BANK))
      expect(new Set(list.map(({ difficulty }) => difficulty)).size).toBeGreaterThanOrEqual(2);
  });

  it('knows each question by an id of its own, in small letters', () => {
    expect(new Set(questions.map(({ id }) => id)).size).toBe(questions.length);
    for (const question of questions) {
      expect(question.id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(bankQuestion(question.id)).toBe(question);
    }
    expect(() => bankQuestion('nobody')).toThrow('bankQuestion: no question has the id, got "nobody"');
  });

  it('leads to lessons that exist, and to clauses that the syllabus has', () => {
    for (const { id, lesson: at, syllabus } of questions) {
      expect(lesson(at), `${id}: ${at}`).toBe(true);
      for (const clause of syllabus) expect(CLAUSES, id).toContain(clause);
    }
  });

  it('names each misconception once, with a cure that exists and a reply, and uses all of them', () => {
    const entries = Object.entries(MISCONCEPTIONS);
    expect(new Set(entries.map(([, { name }]) => name)).size).toBe(entries.length);
    expect(entries.filter(([, { cure }]) => !lesson(cure)).map(([id]) => id)).toEqual([]);
    const used = new Set(
      questions.flatMap((question) => sittingsOf(question).slice(0, 12).flatMap(mistakesOf)),
    );
    expect(entries.map(([id]) => id).filter((id) => !used.has(id))).toEqual([]);
  });
});

describe.each(each)('%s', (_, question) => {
  const all = sittingsOf(question);

  it('is the same for the same seed, and not alike for others', () => {
    expect(sitting(question, 7)).toEqual(all[7]);
    const shown = new Set(all.map(({ stem, payload }) => JSON.stringify([stem, payload])));
    const ways = Object.values(question.given).reduce((product, range) => product * range.length, 1);
    expect(shown.size).toBeGreaterThanOrEqual(hasNumbers(question) ? Math.min(12, ways) : 8);
  });

  it('draws only from its stated ranges', () => {
    for (const { drawn } of all)
      for (const [name, value] of Object.entries(drawn)) expect(question.given[name]).toContain(value);
  });

  it('says nothing that is no text, no number, or a sum gone wrong', () => {
    for (const one of all)
      for (const text of textsOf(one)) {
        expect(text).not.toBe('');
        expect(text).not.toMatch(/− \(\d[\d.]*\u00a0?[A-Za-z]*\)/);
        expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|\s{2}|−0(?:\.0+)?(?![\d.])|\$\{|\.\d{8}/);
      }
  });

  it('ends its solution in the answer, where the answer is a number', () => {
    if (!hasNumbers(question) || question.kind === 'order' || question.kind === 'place') return;
    for (const one of all) expect(one.worked.at(-1)).toContain(answerText(one));
  });
});

describe.each(each.filter(([, { kind }]) => kind === 'choice'))('options of %s', (_, question) => {
  const all = sittingsOf(question).flatMap(({ payload }) => (payload.kind === 'choice' ? [payload] : []));

  it('are four or five, all different, one of them right', () => {
    expect(all).toHaveLength(SEEDS);
    for (const { options, answer } of all) {
      expect(options.length).toBeGreaterThanOrEqual(4);
      expect(options.length).toBeLessThanOrEqual(5);
      expect(new Set(options.map(({ text }) => text)).size).toBe(options.length);
      expect(options.map(({ id }) => id)).toEqual([...'abcde'].slice(0, options.length));
      expect(options.filter(({ misconception }) => misconception === undefined).map(({ id }) => id)).toEqual([
        answer,
      ]);
    }
  });

  it('stand in every order, so that no letter is the right one oftener than chance brings', () => {
    const count = all[0]?.options.length ?? 4;
    for (const letter of [...'abcde'].slice(0, count)) {
      const share = all.filter(({ answer }) => answer === letter).length / SEEDS;
      expect(share).toBeGreaterThan(0.5 / count);
      expect(share).toBeLessThan(1.6 / count);
    }
  });

  it('do not give the right one away by its length', () => {
    const longer = all.filter(({ options, answer }) => {
      const size = (right: boolean): number[] =>
        options.filter(({ id }) => (id === answer) === right).map(({ text }) => text.length);
      const [own = 0] = size(true);
      return own > 1.3 * Math.max(...size(false)) || own < 0.7 * Math.min(...size(false));
    });
    expect(longer.map(({ options }) => options.map(({ text }) => text))).toEqual([]);
  });

  it('offer no power below nothing, and no range without a width', () => {
    const texts = all.flatMap(({ options }) => options.map(({ text }) => text));
    expect(texts.filter((text) => /^−\S+\s[mµnk]?W$/.test(text))).toEqual([]);
    const ends = texts.map((text) => /^(\S+) (?:\S+ )?to (\S+)/.exec(text)?.slice(1) ?? []);
    expect(ends.filter(([from, to]) => from !== undefined && from === to)).toEqual([]);
  });

  it('do not give it away by its digits', () => {
    // How many digits are written is what this one asks about.
    if (!hasNumbers(question) || question.id === 'write-down') return;
    const decimals = (text: string): string => (text.match(/\.\d+/g) ?? []).map((part) => part.length).join();
    const digits = (text: string): string =>
      (text.match(/\d[\d.]*/g) ?? []).map((part) => part.replace('.', '').replace(/^0+/, '').length).join();
    const alone = all.filter(({ options, answer }) => {
      const right = options.find(({ id }) => id === answer)?.text ?? '';
      const others = options.filter(({ id }) => id !== answer).map(({ text }) => text);
      return others.every((text) => decimals(text) !== decimals(right) && digits(text) !== digits(right));
    });
    expect(alone.map(({ options }) => options.map(({ text }) => text))).toEqual([]);
  });
});

describe('questions on words', () => {
  it('have the longest option right no oftener than chance would', () => {
    const longest = worded().filter((question) => {
      const { payload } = sitting(question, 1);
      if (payload.kind !== 'choice') return false;
      const sizes = payload.options.map(({ text }) => text.length);
      return payload.options.some(
        ({ id, text }) => id === payload.answer && text.length === Math.max(...sizes),
      );
    });
    expect(longest.length / worded().length).toBeLessThan(0.4);
    expect(longest.length / worded().length).toBeGreaterThan(0.1);
  });
});

describe.each(each.filter(([, { kind }]) => kind === 'order'))('%s', (_, question) => {
  it('is never shown in the right order, and every item has its place', () => {
    for (const { payload } of sittingsOf(question)) {
      if (payload.kind !== 'order') throw new TypeError('an order was expected');
      expect(payload.items.map(({ id }) => id)).not.toEqual(payload.answer);
      expect(payload.items.map(({ id }) => id).sort()).toEqual([...payload.answer].sort());
      expect(payload.items.length).toBeGreaterThanOrEqual(4);
    }
  });
});

describe.each(each.filter(([, { kind }]) => kind === 'place'))('%s', (_, question) => {
  it('has words for every place of its figure, and one of them right', () => {
    for (const { payload } of sittingsOf(question)) {
      if (payload.kind !== 'place') throw new TypeError('a place was expected');
      expect(payload.places.map(({ id }) => id).sort()).toEqual([...placesOf(payload.figure)].sort());
      const right = payload.places.filter(({ misconception }) => misconception === undefined);
      expect(right.map(({ id }) => id)).toEqual([payload.answer]);
    }
  });
});
