import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetCautions, upperPowersOf } from '../../src/bench/results/cautions.ts';
import type { PointResult } from '../../src/bench/results/point-result.ts';
import { cautionsAt, cautionsElsewhere, largestPowerAt } from '../../src/bench/words/caution-elsewhere.ts';
import { cautionBasis, cautionWords } from '../../src/bench/words/caution-words.ts';
import { anyComputed } from './any-measurement.ts';
import { firstNumber, resultsOf, type Typing, typedMeasurement } from './typed-sheet.ts';

const PAD = { label: 'Pad', kind: 'pad', loss: '20' } as const;
const wordsOf = (typing: Typing) => {
  const point = firstNumber(typing);
  return cautionWords('ascii', { sheet: point.sheet, cautions: cautionsAt(point) });
};
const textOf = (typing: Typing): string =>
  wordsOf(typing)
    .map(({ text }) => text)
    .join('\n');
/** At most so many dBm, and far less measured. */
const upTo = (highest: string): NonNullable<Typing['points']> => [
  { specification: 'atMost', highest, readings: '-10 dBm' },
];

describe('what the cautions reckon with', () => {
  it('is the upper limit or the measured level at its upper end, whichever is more', () => {
    const { sheet, result } = firstNumber({ points: upTo('30'), links: [PAD] });
    const of = (estimate: number, expanded: number): number | undefined =>
      upperPowersOf(sheet, {
        ...result.chain.result,
        estimate,
        propagation: { ...result.chain.result.propagation, expanded },
      })?.mean;
    // 30 dBm is 1 W; 32 + 1 dBm is 1.9953 W
    expect(of(20, 1)).toBeCloseTo(1, 12);
    expect(of(32, 1)).toBeCloseTo(1.99526, 5);
  });

  it('is unknown where there is neither, and then nothing is reckoned', () => {
    const { sheet } = firstNumber({});
    const { measurand } = sheet;
    expect(upperPowersOf({ specification: { lower: 20 }, measurand }, undefined)).toBeUndefined();
    expect(cautionBasis('ascii', undefined)).toMatch(/manual before you connect anything/);
  });

  it('never has more mean than peak envelope power', () => {
    fc.assert(
      fc.property(anyComputed, ({ results }) => {
        for (const result of results) {
          const upper = result.inRange ? result.result.upper : result.upper;
          if (upper !== undefined) expect(upper.mean).toBeLessThanOrEqual(upper.peakEnvelope * (1 + 1e-12));
          expect(largestPowerAt(result)).toBe(upper?.peakEnvelope ?? 0);
        }
      }),
      { numRuns: 50 },
    );
  });

  it('of two equal tones is twice the mean: 30 dBm of mean are 2 W of peak', () => {
    const tones = firstNumber({ points: upTo('30'), sheet: { power: 'mean', keying: 'twoEqualTones' } });
    expect(tones.result.upper.peakEnvelope).toBeCloseTo(2, 9);
    expect(cautionBasis('ascii', tones.result.upper)).toMatch(
      /peak envelope power of 2\.0 W .* mean power of 1\.0 W/,
    );
  });
});

describe('the heat in a chain', () => {
  it('is reckoned with every loss at the low end of its limits, from the transmitter on', () => {
    // 40 dBm are 10 W; the pad next to the transmitter takes at least 19.5 dB of it: 9.9 W; what is left, 0.112 W, goes on
    const text = textOf({
      points: upTo('40'),
      links: [
        { ...PAD, label: 'Last' },
        { ...PAD, label: 'First' },
      ],
    });
    expect(text).toContain('First: gets 10 W and turns 9.9 W of it into heat');
    expect(text).toContain('Last: gets 110 mW');
    expect(text.indexOf('First')).toBeLessThan(text.indexOf('Last'));
  });

  it('is compared with a rating, to either side of it', () => {
    const rated = (power: string) => wordsOf({ points: upTo('40'), links: [{ ...PAD, rated: power }] })[0];
    expect(rated('20 W')).toMatchObject({
      exceeded: false,
      text: expect.stringContaining('rated 20 W, so it stands that'),
    });
    expect(rated('5 W')).toMatchObject({
      exceeded: true,
      text: expect.stringContaining('rated 5.0 W only: too little'),
    });
    expect(rated('')).toMatchObject({ exceeded: false, text: expect.stringContaining('enter its rating') });
  });

  it('is not told of a cable that stays cold, but of one that is rated', () => {
    const cable = { label: 'Cable', kind: 'cable', loss: '0.1', amount: '0.05' } as const;
    expect(textOf({ points: upTo('20'), links: [cable] })).not.toContain('Cable: gets');
    expect(textOf({ points: upTo('20'), links: [{ ...cable, rated: '1 W' }] })).toContain(
      'Cable: gets 100 mW',
    );
  });

  it('does not arise in a comparison or a mismatch, through which nothing flows', () => {
    fc.assert(
      fc.property(anyComputed, ({ results }) => {
        for (const { sheet } of results) {
          const upper = upperPowersOf({ ...sheet, specification: { upper: 40 } }, undefined);
          if (upper === undefined) throw new Error('wish an upper power, got none');
          const lossless = sheet.links.filter(({ lossDb }) => lossDb === 0).map(({ id }) => id);
          for (const caution of sheetCautions(sheet, upper))
            if (caution.code === 'padHeat') expect(lossless).not.toContain(caution.id);
        }
      }),
      { numRuns: 50 },
    );
  });
});

describe('what arrives at the instrument', () => {
  it('without a pad is what the pad keeps away, and is told for a part of three decibels or more', () => {
    const keys = (loss: string) =>
      wordsOf({ points: upTo('30'), sheet: { damage: '20' }, links: [{ ...PAD, loss }] }).map(
        ({ key }) => key,
      );
    expect(keys('3')).toContain('inputLevel-link1');
    expect(keys('2.9')).not.toContain('inputLevel-link1');
  });

  it('is compared with what the input stands, with the pad and without it', () => {
    const words = wordsOf({ points: upTo('30'), sheet: { damage: '20' }, links: [PAD] });
    const at = (key: string) => words.find((one) => one.key === key);
    // 30 - 19.5 = 10.5 dBm
    expect(at('inputLevel-all')).toMatchObject({
      exceeded: false,
      text: 'The meter’s input gets 10.5 dBm: 9.5 dB below the 20.0 dBm it stands.',
    });
    expect(at('inputLevel-link1')).toMatchObject({
      exceeded: true,
      text: expect.stringContaining(
        'gets 30.0 dBm: 10.0 dB above the 20.0 dBm it stands: it would be damaged',
      ),
    });
  });

  it('is told with the digits that show it where it is barely too much', () => {
    // 5 V RMS into 50 ohm, 26.9897 dBm, are 7.0711 V of crest
    const scope = textOf({
      method: 'oscilloscope',
      sheet: { scopeBandwidth: '100', probeBandwidth: '', largestPeak: '7.07' },
      points: [{ specification: 'atMost', highest: '26.9897', readings: '1 Vpp', frequency: '3.58' }],
    });
    expect(scope).toContain('7.071 V (peak of the wave): it stands 7.070 V only: it would be damaged.');
    const meter = (damage: string) =>
      textOf({ points: upTo('20'), sheet: { damage }, links: [{ label: 'Meter', amount: '0.1' }] });
    expect(meter('19.97')).toContain(
      'gets 20.00 dBm: 0.03 dB above the 19.97 dBm it stands: it would be damaged',
    );
    expect(meter('20.04')).toContain('gets 20.0 dBm: 0.04 dB below the 20.0 dBm it stands.');
    const rated = textOf({ points: upTo('30'), links: [{ ...PAD, amount: '0', rated: '996 mW' }] });
    expect(rated).toContain('gets 1.00 W and turns 990 mW of it into heat; rated 996 mW only: too little.');
  });

  it('at a peak detector is twice the crest in reverse on its diode: 30 dBm into 50 ohm are 20 V', () => {
    // sqrt(2 x 1 W x 50 ohm) = 10 V of crest
    const detector = (largestReverse: string) =>
      textOf({
        method: 'peakDetector',
        sheet: { drop: '0.5', largestReverse },
        points: [{ specification: 'atMost', highest: '30', readings: '6.5' }],
      });
    expect(detector('70')).toContain('20.0 V in reverse on its diode, twice the peak: it stands 70.0 V.');
    expect(detector('15')).toContain('it stands 15.0 V only: it would be damaged.');
    expect(detector('')).toContain('enter what it stands to have it compared');
  });
});

describe('a caution of another point', () => {
  const at = (levels: readonly string[]): readonly PointResult[] =>
    resultsOf(
      typedMeasurement({
        points: levels.map((highest) => ({ specification: 'atMost', highest, readings: '-10 dBm' })),
        links: [{ ...PAD, rated: '1 W' }],
      }),
    );

  it('is told once, with the name of the point that has the largest power', () => {
    const [quiet, loud, loudest] = at(['20', '33', '37']);
    if (quiet === undefined || loud === undefined || loudest === undefined)
      throw new Error('wish three points, got fewer');
    const words = cautionsElsewhere('ascii', quiet, [
      { label: 'loud', result: loud },
      { label: 'loudest', result: loudest },
    ]);
    // 37 dBm are 5.0 W
    expect(words.map(({ text }) => text)).toEqual([
      expect.stringMatching(/^loudest: Pad: gets 5\.0 W .* rated 1\.0 W only: too little\.$/),
    ]);
    expect(cautionsElsewhere('ascii', loud, [{ label: 'loudest', result: loudest }])).toEqual([]);
    expect(cautionsElsewhere('ascii', loud, [{ label: 'quiet', result: quiet }])).toEqual([]);
  });
});
