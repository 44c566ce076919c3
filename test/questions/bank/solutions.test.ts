import { describe, expect, it } from 'vitest';
import type { Sitting } from '../../../src/questions/bank/types.ts';
import { answerText, numbered, sittingsOf, worded } from './all.ts';
import { proofOf } from './prove-line.ts';
import { numbersOf, statementsOf } from './read-line.ts';

/** Solutions without a sum: what is asked for stands in the question. */
const WITHOUT_SUM: Readonly<Record<string, string>> = {
  'pep-of-steady-carrier': 'the peak is what the meter shows',
  'fm-mean': 'the mean stays what it was',
  'point-at-height': 'nothing is worked out; the formulas have letters',
  'point-at-plane': 'nothing is worked out; the loss stands in the figure',
  'point-at-verdict': 'bands are looked at, not added',
  'point-at-own-step': 'squares are compared by eye',
  'point-at-first-to-fail': 'the rating is far below the power',
};

/** Everything that somebody knows before the first line: the question with its items, places and figure, without the options. */
function questionOf({ stem, payload }: Sitting): string {
  switch (payload.kind) {
    case 'order':
      return [stem, ...payload.items.map(({ text }) => text)].join('; ');
    case 'place':
      return [stem, ...payload.places.map(({ words }) => words), JSON.stringify(payload.figure)].join('; ');
    default:
      return stem;
  }
}

const questions = numbered().map((question) => [question.id, question] as const);

describe.each(questions)('the solution of %s', (id, question) => {
  const all = sittingsOf(question).map((one) => ({ one, proof: proofOf(questionOf(one), one.worked) }));

  it('holds line by line for a pocket calculator, and takes no number from nowhere, over 200 seeds', () => {
    const faults = all.flatMap(({ one, proof }) => proof.faults.map((fault) => `${one.seed}: ${fault}`));
    expect(faults).toEqual([]);
  });

  it('has a sum that was proved, unless there is none to do', () => {
    const without = all.filter(({ proof }) => proof.proved === 0);
    expect(without.length > 0).toBe(id in WITHOUT_SUM);
  });

  it('ends in a number that its lines have proved, or that the question states', () => {
    if (question.kind === 'order' || question.kind === 'place') return;
    for (const { one } of all) {
      const last = numbersOf(one.worked.at(-1) ?? '').map(({ value }) => value);
      for (const { value } of numbersOf(answerText(one))) expect(last).toContain(value);
    }
  });
});

describe('solutions without drawn numbers', () => {
  it('have a reason where questions with numbers have no sum', () => {
    const known = questions.map(([id]) => id);
    for (const [id, reason] of Object.entries(WITHOUT_SUM)) {
      expect(known).toContain(id);
      expect(reason).not.toBe('');
    }
  });

  it('say nothing that is not equal', () => {
    const faults = worded().flatMap((question) =>
      sittingsOf(question)
        .slice(0, 1)
        .flatMap(({ worked }) => worked.flatMap((line) => proofOf(line, [line]).faults)),
    );
    expect(faults).toEqual([]);
  });
});

describe('the proof itself', () => {
  const faults = (question: string, ...lines: string[]): number => proofOf(question, lines).faults.length;
  const proved = (question: string, ...lines: string[]): number => proofOf(question, lines).proved;

  it.each([
    ['a last digit that is off', '37 W and 6 W', ['37 W/6 W = 6.18.']],
    ['another unit', '9 V and 1.8 A', ['9 V × 1.8 A = 16.20 V.']],
    ['another prefix', '10 V across 50 Ω', ['(10 V)²/(2 × 50 Ω) = 1.00 mW.']],
    ['a missing square', '10 V across 50 Ω', ['10 V/50 Ω = 200 mW.']],
    ['a level for a gain', '38 dBm and 2 dB', ['38 dBm − 2 dB = 36 dB.']],
    ['two levels added', '20 dBm and 10 dBm', ['20 dBm + 10 dBm = 30 dBm.']],
    ['a number from nowhere', '5 dB', ['The loss is 6 dB.']],
    [
      'a number that a later line takes from nowhere',
      '5 dB and 2',
      ['2 × 5 dB = 10 dB.', '11 dB/2 = 5.5 dB.'],
    ],
    ['a rounded number carried too far', '2', ['1/3 = 0.33.', '100 × 0.33 = 33.333.']],
    ['one end of a band', '0.2', ['20 lg (1 ± 0.2) = +1.58/−1.58 dB.']],
    ['a level and a power that do not agree', '20 dBm', ['20 dBm is 10.0 mW.']],
    ['a wrong step of a chain', '8', ['8² = 64 = 2⁵.']],
  ] as const)('tells %s', (_, question, lines) => {
    expect(faults(question, ...lines)).toBeGreaterThan(0);
  });

  it.each([
    ['quotients and logarithms', '37 W and 6 W', ['37 W/6 W = 6.167.', '10 lg 6.167 = 7.9 dB.'], 2],
    ['powers of ten in words', '38 dBm', ['1 mW times ten to the power of 38/10 is 6.31 W.'], 1],
    ['roots with units', '8 W, 50 Ω', ['The crest is √(2 × 8 W × 50 Ω) = 28.28 V.'], 1],
    ['levels and their differences', '25 dBm, −25 dBm', ['25 dBm − (−25 dBm) = 50 dB.'], 1],
    ['levels as powers', '17 dBm', ['17 dBm is 50.12 mW.', 'As a level 50.12 mW is 17.00 dBm.'], 2],
    ['bands', '20 %', ['20 lg (1 ± 20 %) = +1.58/−1.94 dB.'], 1],
    ['shares', '30 % of 500 mW', ['30 % of 500 mW is 150 mW.'], 1],
    ['small numbers', '40 mm, 11.5 ppm, 17 °C, 20 °C', ['40 mm × 11.5 × 10⁻⁶ × (17 − 20) = −1.38 µm.'], 1],
  ] as const)('reads %s', (_, question, lines, count) => {
    expect(proofOf(question, lines).faults).toEqual([]);
    expect(proved(question, ...lines)).toBe(count);
  });

  it('finds both steps of a chain, and nothing in plain words', () => {
    expect(statementsOf('10 lg 64 = 20 lg 8 = 18.1 dB.')).toHaveLength(2);
    expect(statementsOf('The pad is warm: 5 W go in, and less comes out.')).toEqual([]);
  });
});
