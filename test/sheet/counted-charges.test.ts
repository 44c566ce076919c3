import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clubSheet } from '../../src/sheet/club.ts';
import { type CountedLevel, clubCurrent, directCurrent } from '../../src/sheet/counted-charges.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';

const anyLevel: fc.Arbitrary<CountedLevel> = fc.record({
  levelDbm: fc.double({ min: -30, max: 60, noNaN: true }),
  loadOhm: fc.double({ min: 1, max: 1000, noNaN: true }),
  halfDb: fc.double({ min: 0, max: 6, noNaN: true }),
  counted: fc.constantFrom('heating' as const, 'crest' as const),
});
const near = (actual: number, wish: number): void => expect(Math.abs(actual / wish - 1)).toBeLessThan(1e-12);
/** SI Brochure, 9th edition, 2.2. */
const CHARGE = 1.602176634e-19;

describe('the direct current that heats as a level does', () => {
  it('brings the power of the level into the load, and holds to Ohm’s law, at the middle and at both ends', () => {
    fc.assert(
      fc.property(anyLevel, (given) => {
        const { powerW, volts, amperes } = directCurrent(given);
        for (const end of ['value', 'lower', 'upper'] as const) {
          near(volts[end] * amperes[end], powerW[end]);
          near(volts[end] / amperes[end], given.loadOhm);
        }
        near(powerW.value, 10 ** (given.levelDbm / 10) / 1000);
      }),
    );
  });

  it('moves its amperes over the elementary charge, the crest the root of two more', () => {
    fc.assert(
      fc.property(anyLevel, (given) => {
        const heating = directCurrent({ ...given, counted: 'heating' });
        const crest = directCurrent({ ...given, counted: 'crest' });
        near(heating.charges.value, heating.amperes.value / CHARGE);
        near(crest.charges.value, Math.SQRT2 * heating.charges.value);
        near(crest.countedW, 2 * heating.countedW);
        expect(crest.amperes).toEqual(heating.amperes);
      }),
    );
  });

  it('is known half as well in decibels of power as the level: the ends go as the root', () => {
    fc.assert(
      fc.property(anyLevel, (given) => {
        const { charges, powerW } = directCurrent(given);
        near((charges.upper / charges.value) ** 2, powerW.upper / powerW.value);
        near((charges.lower / charges.value) ** 2, powerW.lower / powerW.value);
        expect(charges.lower).toBeLessThanOrEqual(charges.value);
      }),
    );
  });

  it('is 141.4 mA and 8.827e17 charges a second for a watt in 50 ohms, by hand', () => {
    const { amperes, charges } = directCurrent({
      levelDbm: 30,
      loadOhm: 50,
      halfDb: 0,
      counted: 'heating',
    });
    near(amperes.value, Math.sqrt(1 / 50));
    near(charges.value, Math.sqrt(1 / 50) / CHARGE);
    expect(charges.upper).toBe(charges.value);
  });

  it('begins with the club’s transmitter, known as well as its chain knows a level', () => {
    expect(clubCurrent().levelDbm).toBe(27);
    expect(clubCurrent().halfDb.toFixed(2)).toBe(chainOf(clubSheet()).result.propagation.expanded.toFixed(2));
  });

  it('needs a load', () => {
    expect(() => directCurrent({ ...clubCurrent(), loadOhm: 0 })).toThrow(RangeError);
  });
});
