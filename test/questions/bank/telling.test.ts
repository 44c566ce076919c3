import { describe, expect, it } from 'vitest';
import type { BankQuestion } from '../../../src/questions/bank/types.ts';
import { numbered, SEEDS, sittingsOf, worded } from './all.ts';
import { numbersOf } from './read-line.ts';

/** Whether the right option stands out in some way, so that somebody who knows nothing could find it. */
type Tell = (right: string, others: readonly string[]) => boolean;

const decimals = (text: string): string =>
  numbersOf(text)
    .map(({ place }) => Math.round(Math.log10(place)))
    .join();
const digits = (text: string): string =>
  (text.match(/\d[\d.]*/g) ?? []).map((part) => part.replace('.', '').replace(/^0+/, '').length).join();
/** The odd one out: all others have in common what the right one has not. */
const oddOne =
  (of: (text: string) => string): Tell =>
  (right, others) =>
    new Set(others.map(of)).size === 1 && !others.map(of).includes(of(right));

const TELLS = {
  'the longest': (right, others) => others.every((text) => text.length < right.length),
  'the shortest': (right, others) => others.every((text) => text.length > right.length),
  'the one with other decimals': oddOne(decimals),
  'the one with another number of digits': oddOne(digits),
} satisfies Readonly<Record<string, Tell>>;

/** How often in all sittings the right option is told by one tell. */
function share(question: BankQuestion, tell: Tell): number {
  const all = sittingsOf(question).flatMap(({ payload }) => (payload.kind === 'choice' ? [payload] : []));
  const told = all.filter(({ options, answer }) => {
    const texts = (isRight: boolean): readonly string[] =>
      options.filter(({ id }) => (id === answer) === isRight).map(({ text }) => text);
    return tell(texts(true)[0] ?? '', texts(false));
  });
  return told.length / Math.max(1, all.length);
}
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const isChoice = ({ kind }: BankQuestion): boolean => kind === 'choice';
// how many digits are written is what this one asks about
const choices = numbered().filter((question) => isChoice(question) && question.id !== 'write-down');

/** By a tell nobody may be right in more than half of the sittings of one question. */
const MOST = 0.5;

describe.each(Object.entries(TELLS))('whoever always takes %s', (_, tell) => {
  it('is right in half of the sittings of a question at most, over 200 seeds', () => {
    expect(sittingsOf(choices[0] as BankQuestion)).toHaveLength(SEEDS);
    const told = choices.map((question) => [question.id, share(question, tell)] as const);
    expect(told.filter(([, often]) => often > MOST)).toEqual([]);
  });

  it('is right in less than a tenth of all such sittings', () => {
    expect(mean(choices.map((question) => share(question, tell)))).toBeLessThan(0.1);
  });
});

describe('whoever always takes the largest number or the smallest', () => {
  const value = (text: string): number => {
    const [number] = numbersOf(text);
    const prefix = { k: 1e3, m: 1e-3, µ: 1e-6, n: 1e-9, p: 1e-12 }[
      /^[kmµnp](?=[WVΩ])/.exec(number?.unit ?? '')?.[0] ?? ''
    ];
    return (/^\u2212/.test(text) ? -1 : 1) * (number?.value ?? Number.NaN) * (prefix ?? 1);
  };

  it.each([
    ['largest', (right, others) => others.every((text) => value(text) < value(right))],
    ['smallest', (right, others) => others.every((text) => value(text) > value(right))],
  ] satisfies readonly (readonly [string, Tell])[])('is right no oftener than by chance: %s', (_, tell) => {
    // four or five options: chance would be 0.24
    expect(mean(choices.map((question) => share(question, tell)))).toBeLessThan(0.24);
  });
});

describe('whoever always takes the longest or the shortest sentence', () => {
  it.each(['the longest', 'the shortest'] as const)('gains next to nothing: %s', (name) => {
    const words = worded().filter(isChoice);
    const often = mean(words.map((question) => share(question, TELLS[name])));
    expect(often).toBeGreaterThan(0.1);
    expect(often).toBeLessThan(0.35);
  });
});

describe('options with numbers', () => {
  /** The unit apart from its prefix and from the kind of volts. */
  const unit = (text: string): string =>
    numbersOf(text)
      .map((number) => number.unit.replace(/^[kmµnp](?=[WV])/, ''))
      .filter((each) => each !== '')
      .at(-1) ?? '';

  it('are all in the unit that is asked for', () => {
    const mixed = choices.flatMap((question) =>
      sittingsOf(question).flatMap(({ payload }) => {
        // what is said in words may name several
        if (payload.kind !== 'choice' || payload.options.some(({ text }) => /^[a-z]/i.test(text))) return [];
        const units = new Set(payload.options.map(({ text }) => unit(text)));
        return units.size === 1 ? [] : [`${question.id}: ${[...units].join(', ')}`];
      }),
    );
    expect([...new Set(mixed)]).toEqual([]);
  });
});
