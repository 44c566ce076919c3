import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { type FoundMean, foundMeanOf } from '../../src/sheet/evaluated-readings.ts';
import { clubReadings, SCATTERS } from '../../src/sheet/evening.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf } from '../../src/widgets/few-readings/figure.ts';
import { type ReadingsState, readingsSpec, repeatedOf } from '../../src/widgets/few-readings/spec.ts';
import { strings } from '../../src/widgets/few-readings/strings.ts';
import { answersOf, lanesOf, readingsText, summarise } from '../../src/widgets/few-readings/words.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = readingsSpec;
const prepared: ReadingsState = defaultState(fields);
const nb = '\u00a0';
const found = (now: Partial<ReadingsState> = {}): FoundMean =>
  foundMeanOf(repeatedOf({ ...prepared, ...now }));
const figures = (now: Partial<ReadingsState> = {}): readonly string[] =>
  answersOf(found(now)).map(({ figure }) => figure);

describe('the address of the readings', () => {
  it('has a specification free of faults, units as its kinds say, and words for every code', () => {
    expect(specFaults(readingsSpec)).toEqual([]);
    for (const [name, unit] of Object.entries(strings.settings.units))
      expect(kindOf(fields[name as keyof typeof strings.settings.units].kind).base, name).toBe(unit);
    expect(Object.keys(strings.settings.choices.known)).toEqual([...SCATTERS]);
  });

  it('gives back every state that it was made from, and begins with three readings', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(readingsSpec, encode(readingsSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
    expect(repeatedOf(prepared)).toEqual(clubReadings());
  });
});

describe('the readings in any state', () => {
  it('can be drawn and said, with finite numbers, everything between the ends of the axis', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        const known = found(state);
        const { domain, curve, compared, lanes } = figureOf(known);
        expect(domain.upper).toBeGreaterThan(domain.lower);
        for (const { x } of [...curve, ...compared]) {
          expect(x).toBeGreaterThan(domain.lower);
          expect(x).toBeLessThan(domain.upper);
        }
        for (const { interval } of lanes)
          if (interval) expect(interval.upper).toBeLessThanOrEqual(domain.upper + 1e-9);
        const words = answersOf(known).flatMap(Object.values);
        expect([summarise(known), readingsText(known), ...words].join(' ')).not.toMatch(
          /NaN|Infinity|undefined/,
        );
      }),
      { numRuns: 60 },
    );
  });
});

describe('the answers', () => {
  it('of three readings: band by t, careless band, factor, and nothing that stays', () => {
    expect(figures()).toEqual([`26.86${nb}dBm ±0.41${nb}dB`, `±0.18${nb}dB`, 'k = 4.53', 'Nothing']);
    const [, careless, factor] = answersOf(found());
    expect(careless?.words).toContain(`holds 81.6${nb}%`);
    expect(factor?.words).toContain('freedom, 2.0, for');
  });

  it('of one reading are the reading and no band', () => {
    const one = found({ count: 1 });
    expect(figures({ count: 1 })).toEqual([`26.84${nb}dBm`, 'No band', 'Nothing']);
    expect(lanesOf(one).map(({ number }) => number)).toEqual(['nobody knows', 'nobody knows', 'none']);
    expect(figureOf(one).curve).toEqual([]);
    expect(figureOf(one).compared).toEqual([]);
  });

  it('of one reading with experience are a band, and of ten with shared limits what stays', () => {
    expect(figures({ count: 1, known: 'pooled' })[0]).toBe(`26.84${nb}dBm ±0.23${nb}dB`);
    const ten = { count: 10, limits: 0.5 };
    expect(figures(ten)[0]).toBe(`26.90${nb}dBm ±0.49${nb}dB`);
    expect(figures(ten)[3]).toBe(`±0.48${nb}dB`);
    expect(answersOf(found(ten))[2]?.words).toContain('very many');
    expect(lanesOf(found(ten))[2]?.number).toBe(`±0.50${nb}dB`);
  });

  it('list the readings that are used, and speak without signs', () => {
    expect(readingsText(found({ count: 2 }))).toBe('Readings: 26.84, 27.02 dBm.');
    expect(summarise(found())).toBe(
      'Readings taken: 3. Band: 26.86 decibel-milliwatts plus or minus 0.41 decibels. Two standard uncertainties: plus or minus 0.18 decibels.',
    );
  });
});
