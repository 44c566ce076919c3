import { describe, expect, test } from 'vitest';
import {
  componentOf,
  evaluate,
  gainDb,
  levelDbm,
  type Model,
  powerW,
  type Statement,
  voltsPeak,
} from '#compute';
import { outOfRangeText } from '../../../src/text/out-of-range-text.ts';
import { asSentence } from '../../../src/text/summary/format.ts';
import type { LineKind } from '../../../src/text/summary/piece.ts';
import { type SummaryInput, summarise } from '../../../src/text/summary/summarise.ts';
import { decidedByWords, sidesOf, verdictLabel, verdictWords } from '../../../src/text/words.ts';
import { inputOf, modelOf, parts } from './demonstration.ts';

const said = (input: SummaryInput, kind: LineKind): string =>
  asSentence('shown', summarise(input), [kind]).replaceAll('\u00a0', ' ').replaceAll('\u2212', '-');
const limits = (halfWidth: number): Statement => ({ form: 'limits', shape: 'rectangular', halfWidth });
const certificate: Statement = { form: 'expanded', expanded: 0.06, coverageFactor: 2 };
const inModel = (model: Model, unit: SummaryInput['unit']): SummaryInput => ({
  what: 'Result',
  result: evaluate({ model }),
  unit,
  parts: [{ id: 'a', label: 'First' }],
});

describe('the worst case', () => {
  test('gives limits where every part has some', () => {
    expect(said(inputOf(), 'worst')).toBe('Worst case \u00b13.3 dB, 23.5 to 30.1 dBm, 0.22 to 1.02 W.');
  });

  test('guarantees nothing where a part has no limit, and names it', () => {
    const one = inputOf([...parts, { id: 'meter', label: 'Lent meter', statement: certificate }]);
    expect(said(one, 'worst')).toMatch(
      /^Worst case: nothing is guaranteed, since Lent meter has no limit; the other parts alone come to \u00b13\.3 dB/,
    );
    const three = inputOf(
      ['One', 'Two', 'Three'].map((label) => ({ id: label, label, statement: certificate })),
    );
    expect(said(three, 'worst')).toMatch(/since One, Two and Three have no limit/);
  });

  test('is lopsided where its limits are', () => {
    const input = inputOf([
      { id: 'a', label: 'A', statement: { form: 'asymmetric', lower: -0.1, upper: 0.4 } },
    ]);
    // The middle of the limits, 0.15 dB, is a shift of the estimate: 26.95 dBm with even ends.
    expect(said(input, 'worst')).toMatch(/^Worst case \u00b10\.25 dB, 26\.70 to 27\.20 dBm/);
  });
});

describe('the value', () => {
  test('without any uncertainty says so instead of looking exact', () => {
    expect(said(inputOf([]), 'result')).toBe(
      'Power at the socket: 26.80 dBm; 478.6 mW. No uncertainty is stated: how sure it is stays open.',
    );
    expect(summarise(inputOf([])).lines.some(({ kind }) => kind === 'dominant')).toBe(false);
  });

  test('names every part that is level with the biggest', () => {
    const input = inputOf([
      { id: 'a', label: 'Ammeter', statement: limits(0.2) },
      { id: 'b', label: 'Voltmeter', statement: limits(0.1) },
      { id: 'c', label: 'Loss of heat', statement: limits(0.2) },
    ]);
    expect(said(input, 'dominant')).toBe(
      'Biggest parts: Ammeter and Loss of heat, 44 % of the variance each.',
    );
  });

  test('names finite degrees of freedom', () => {
    const readings: Statement = { form: 'readings', standardDeviation: 0.1, count: 4 };
    const input = { ...inputOf([{ id: 'r', label: 'Scatter', statement: readings }]) };
    expect(said(input, 'result')).toMatch(/\(k = 2, .* %, 3 degrees of freedom\)/);
    const two: Statement = { ...readings, count: 2 };
    expect(said(inputOf([{ id: 'r', label: 'Scatter', statement: two }]), 'result')).toMatch(
      /, 1 degree of freedom\)/,
    );
  });

  test('in watts never has one plus-minus', () => {
    const a = componentOf({ id: 'a', statement: limits(0.1), unit: 'own', percentOf: 'reading' });
    const input = inModel({ kind: 'function', inputs: [a], f: ([x = 0]) => 1.05 + x ** 1 }, 'W');
    expect(said(input, 'result')).toMatch(/^Result: 1\.05 W, 0\.9\d to 1\.1\d \(k = /);
    expect(said(input, 'worst')).not.toMatch(/\u00b1/);
  });

  test('in micrometres has its own unit for deviations and no watts', () => {
    const a = componentOf({ id: 'a', statement: limits(0.5), unit: 'own', percentOf: 'reading' });
    const input = inModel({ kind: 'sum', constant: 3, inputs: [a], sensitivities: [1] }, 'um');
    expect(said(input, 'result')).toMatch(
      /^Result: 3\.00 \u00b5m \u00b10\.57 \u00b5m \(k = 1\.96, 95 %\)\.$/,
    );
    expect(said(input, 'worst')).toBe('Worst case \u00b10.50 \u00b5m, 2.50 to 3.50 \u00b5m.');
  });
});

describe('the whole distribution', () => {
  test('is given with its probability', () => {
    expect(said(inputOf(), 'whole')).toBe('Whole distribution, 95.45 %: 24.6 to 29.0 dBm, 290 to 800 mW.');
  });

  test('says why it is not there', () => {
    const a = componentOf({ id: 'a', statement: limits(0.1), unit: 'dB', percentOf: 'reading' });
    const b = { ...a, id: 'b' };
    const product = inModel({ kind: 'function', inputs: [a], f: ([x = 0]) => 5 + x }, 'dBm');
    expect(said(product, 'whole')).toMatch(/^The whole distribution is not given: this result is not a sum/);
    const tied: Model = {
      kind: 'sum',
      constant: 5,
      inputs: [a, b],
      sensitivities: [1, 1],
      correlations: [{ a: 'a', b: 'b', r: 0.5 }],
    };
    expect(said(inModel(tied, 'dBm'), 'whole')).toMatch(
      /^The whole distribution is not given: some parts are corr/,
    );
  });
});

describe('the verdict', () => {
  const near: typeof parts = parts;
  const narrow = near.map((part) => ({ ...part, statement: limits(0.05) }));

  test('comes with rule, deciding interval and probability', () => {
    expect(said(inputOf(narrow), 'verdict')).toBe(
      'Specification 25.5 to 28.5 dBm: inside the specification (guard band of 1 times U; decided by the whole distribution; probability of conformity more than 99.9 %).',
    );
  });

  test('under simple acceptance admits that it cannot answer otherwise', () => {
    expect(said(inputOf(parts, { kind: 'simple' }), 'verdict')).toBe(
      'Specification 25.5 to 28.5 dBm: inside the specification (simple acceptance, which takes no uncertainty off and cannot answer "can\u2019t tell"; decided by the whole distribution; probability of conformity 73 %).',
    );
  });

  test('under a required probability names it', () => {
    expect(said(inputOf(narrow, { kind: 'probability', required: 0.95 }), 'verdict')).toMatch(
      /inside the specification \(required probability 95 %; /,
    );
  });

  test('says what it would take where nothing could be inside', () => {
    expect(said(inputOf(), 'verdict')).toMatch(
      /Nothing could be inside with this uncertainty: the method falls short, not the transmitter; it would take \u00b11\.5 dB or better\.$/,
    );
  });

  test('about one limit has words of its own', () => {
    const atMost = (upper: number) =>
      said(inputOf(narrow, { kind: 'guardBand', multiplier: 1.5 }, { upper }), 'verdict');
    expect(atMost(28)).toMatch(
      /^Specification at most 28 dBm: not shown to exceed the limit, and shown to keep to it .*guard band of 1\.5 times U/,
    );
    expect(atMost(26.85)).toMatch(
      /^Specification at most 26\.85 dBm: can\u2019t tell: not shown to exceed the limit, and not shown to keep/,
    );
    expect(atMost(26)).toMatch(/^Specification at most 26 dBm: exceeds the limit/);
    expect(said(inputOf(narrow, { kind: 'simple' }, { lower: 28 }), 'verdict')).toMatch(
      /^Specification at least 28 dBm: falls short of the limit/,
    );
  });

  test('has distinct words for each side and verdict', () => {
    const verdicts = ['inside', 'outside', 'cant-tell'] as const;
    const sides = ['both', 'upper', 'lower'] as const;
    const words = sides.flatMap((side) => verdicts.map((verdict) => verdictWords(verdict, side)));
    expect(new Set(words).size).toBe(9);
    expect(verdicts.map(verdictLabel)).toEqual(['inside', 'outside', "can't tell"]);
    expect(new Set(Object.values(decidedByWords)).size).toBe(4);
  });

  test('takes an infinite limit for none', () => {
    expect(sidesOf({ lower: Number.NEGATIVE_INFINITY, upper: 3 })).toBe('upper');
    expect(sidesOf({ lower: 3, upper: Number.POSITIVE_INFINITY })).toBe('lower');
    expect([sidesOf({ lower: 1, upper: 3 }), sidesOf({ upper: 3 }), sidesOf({ lower: 3 })]).toEqual([
      'both',
      'upper',
      'lower',
    ]);
  });

  test('without a probability says why', () => {
    const input = inputOf(narrow);
    const judged = input.judged && {
      ...input.judged,
      judgement: {
        ...input.judged.judgement,
        decidedBy: 'worstCase' as const,
        probabilityOfConformity: undefined,
      },
    };
    expect(said({ ...input, ...(judged && { judged }) }, 'verdict')).toMatch(
      /decided by the worst case; no probability, since a worst case speaks of none\)\.$/,
    );
  });
});

describe('cautions', () => {
  const caution = (one: NonNullable<SummaryInput['cautions']>[number]) =>
    said({ ...inputOf(), cautions: [one] }, 'caution');
  const heat = { code: 'padHeat', id: 'first', incident: powerW(0.7), heat: powerW(0.694) } as const;
  const input = {
    code: 'inputLevel',
    level: levelDbm(28.5),
    damageLevel: levelDbm(20),
    margin: gainDb(-8.5),
  } as const;

  test('about heat name pad, heat and rating', () => {
    expect(caution({ ...heat, rating: { power: powerW(1), of: 'heat' }, status: 'within' })).toBe(
      'Caution. First pad: 700 mW in, 690 mW of heat; rated heat 1.0 W.',
    );
    expect(caution({ ...heat, rating: { power: powerW(0.5), of: 'input' }, status: 'exceeded' })).toBe(
      'Caution. First pad: 700 mW in, 690 mW of heat: TOO MUCH, rated input power 500 mW.',
    );
    expect(caution({ ...heat, rating: undefined, status: 'unrated' })).toBe(
      'Caution. First pad: 700 mW in, 690 mW of heat; no rated heat is stated: look it up.',
    );
  });

  test('about the input say which pad was left out', () => {
    expect(caution({ ...input, without: 'second', status: 'exceeded' })).toBe(
      'Caution. Without Second pad, at the input: 28.5 dBm: TOO MUCH, damage level 20.0 dBm.',
    );
    expect(caution({ ...input, level: levelDbm(8.5), without: undefined, status: 'within' })).toBe(
      'Caution. At the input: 8.5 dBm; damage level 20.0 dBm.',
    );
  });

  test('about what is barely too much have the digits that show it', () => {
    const over = { level: levelDbm(20.03), margin: gainDb(-0.03), without: undefined } as const;
    expect(caution({ ...input, ...over, status: 'exceeded' })).toBe(
      'Caution. At the input: 20.03 dBm: TOO MUCH, damage level 20.00 dBm.',
    );
    expect(caution({ ...heat, rating: { power: powerW(0.6938), of: 'heat' }, status: 'exceeded' })).toBe(
      'Caution. First pad: 700 mW in, 694.0 mW of heat: TOO MUCH, rated heat 693.8 mW.',
    );
  });

  test('about volts say which', () => {
    const volts = {
      volts: voltsPeak(8.4),
      largest: voltsPeak(7.1),
      without: undefined,
      status: 'exceeded',
    } as const;
    expect(caution({ code: 'inputPeak', ...volts })).toBe(
      'Caution. At the input: 8.4 V peak: TOO MUCH, largest 7.1 V.',
    );
    expect(caution({ code: 'diodeReverse', ...volts, largest: undefined, status: 'unrated' })).toBe(
      'Caution. At the input: 8.4 V reverse voltage on the diode; no largest is stated: look it up.',
    );
  });

  test('about a part without a label use its id', () => {
    expect(caution({ ...heat, id: 'x9', rating: undefined, status: 'unrated' })).toMatch(/^Caution\. x9:/);
  });
});

describe('a method out of range', () => {
  const shown = (reason: Parameters<typeof outOfRangeText>[1]) => outOfRangeText('ascii', reason);

  test('says in one sentence why it gives no number', () => {
    expect(shown({ code: 'noTermination' })).toMatch(/^Out of range: the oscilloscope is not terminated/);
    expect(shown({ code: 'aboveBandwidth', ratio: 1.45, largest: 0.3 })).toMatch(
      /frequency is 1\.45 of the bandwidth, and above 0\.30/,
    );
    expect(shown({ code: 'belowDetector', power: powerW(0.01), least: powerW(0.05) })).toMatch(
      /10 mW is below 50 mW/,
    );
    expect(shown({ code: 'fullScaleError', error: powerW(5), reading: powerW(3) })).toMatch(
      /error, 5\.0 W, is more than a third of the reading, 3\.0 W/,
    );
    expect(shown({ code: 'belowFloor', reading: levelDbm(-70), limit: levelDbm(-60) })).toMatch(
      /-70\.0 dBm is below the meter's floor, -60\.0 dBm/,
    );
    expect(shown({ code: 'aboveLargest', reading: levelDbm(30), limit: levelDbm(20) })).toMatch(
      /30\.0 dBm is above the meter's largest level, 20\.0 dBm/,
    );
  });
});

describe('readings and what was taken', () => {
  test('a mean says of how many', () => {
    const input = { ...inputOf(), readings: { mean: -13.44, count: 5, unit: 'dBm' } as const };
    expect(said(input, 'readings')).toMatch(
      /^Mean of 5 readings -13\.44 dBm; added back: Cable 0\.2 dB, Second pad 20/,
    );
  });

  test('nothing lost, nothing added back; nothing stated, nothing taken', () => {
    const { lines } = summarise({
      what: 'Result',
      result: evaluate({ model: modelOf([]) }),
      unit: 'dBm',
      parts: [],
      readings: { mean: 7, count: 1, unit: 'dBm' },
    });
    expect(lines.map(({ kind }) => kind)).toEqual(['result', 'whole', 'readings', 'worst']);
  });
});
