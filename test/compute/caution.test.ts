import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cautionsOf, exceeded, upperLevel } from '../../src/compute/caution.ts';
import type { Caution, CautionLink } from '../../src/compute/caution.types.ts';
import { heatInPad } from '../../src/compute/heat.ts';
import { levelToPower } from '../../src/compute/level.ts';
import { voltsToLevel } from '../../src/compute/level-voltage.ts';
import { gainDb, levelDbm, ohms, powerW, voltsPeak, voltsRms } from '../../src/compute/quantity.ts';
import { expectNear, expectPrinted, expectWithin } from './near.ts';

const fifty = ohms(50);
const pad = (id: string, attenuationDb: number, more: Partial<CautionLink> = {}): CautionLink => ({
  id,
  highestGain: gainDb(-attenuationDb),
  lowestGain: gainDb(-attenuationDb),
  removable: true,
  ...more,
});
const carrier = (watts: number) => ({ mean: powerW(watts), peakEnvelope: powerW(watts) });
const heats = (cautions: readonly Caution[]) => cautions.filter((c) => c.code === 'padHeat');
const levels = (cautions: readonly Caution[]) => cautions.filter((c) => c.code === 'inputLevel');

describe('heat in a pad', () => {
  it('is 4.95 W of 5 W in 20 dB, and 10 dB lets half a watt of 5 W through', () => {
    expectNear(heatInPad({ power: powerW(5), gain: gainDb(-20) }), 4.95);
    expectNear(heatInPad({ power: powerW(5), gain: gainDb(-10) }), 4.5);
  });

  it('and what leaves it make what went in', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e3, noNaN: true }),
        fc.double({ min: -100, max: 0, noNaN: true }),
        (watts, gain) => {
          const heat = heatInPad({ power: powerW(watts), gain: gainDb(gain) });
          expectWithin(heat + watts * 10 ** (gain / 10), watts, 1e-12 * watts);
        },
      ),
    );
  });

  it('is nothing in a pad of 0 dB', () => {
    expect(heatInPad({ power: powerW(5), gain: gainDb(0) })).toBe(0);
  });

  it('is refused for a gain', () => {
    expect(() => heatInPad({ power: powerW(5), gain: gainDb(0.1) })).toThrow(
      new RangeError('heatInPad: gain must be <= 0, got 0.1'),
    );
  });
});

describe('the heat along a chain', () => {
  it('of lossy links and what arrives make the upper power, where tolerances are none', () => {
    const losses = fc.array(fc.double({ min: 0.1, max: 30, noNaN: true }), { maxLength: 6 });
    fc.assert(
      fc.property(losses, (attenuations) => {
        const links = attenuations.map((a, i) => pad(`${i}`, a));
        const cautions = cautionsOf({ upper: carrier(2), links, instrument: { resistance: fifty } });
        const heat = heats(cautions).reduce((sum, c) => sum + c.heat, 0);
        const arriving = levels(cautions)[0]?.level ?? levelDbm(0);
        expectWithin(heat + levelToPower(arriving), 2, 1e-9);
      }),
    );
  });

  it('takes the least attenuation before a pad and the most inside it', () => {
    const wide = { highestGain: gainDb(-9), lowestGain: gainDb(-11) };
    const links = [pad('first', 10, wide), pad('second', 10, wide)];
    const [first, second] = heats(
      cautionsOf({ upper: carrier(1), links, instrument: { resistance: fifty } }),
    );
    expectNear(first?.heat ?? 0, 1 - 10 ** -1.1);
    expectNear(second?.incident ?? 0, 10 ** -0.9);
    expectNear(second?.heat ?? 0, 10 ** -0.9 * (1 - 10 ** -1.1));
  });

  it('is compared with what the data sheet rates: power into the input, or heat', () => {
    const at = (watts: number, of: 'input' | 'heat') => {
      const links = [pad('p', 3, { rating: { power: powerW(watts), of } })];
      return heats(cautionsOf({ upper: carrier(1), links, instrument: { resistance: fifty } }))[0]?.status;
    };
    expect(at(0.9, 'input')).toBe('exceeded');
    expect(at(0.9, 'heat')).toBe('within');
    expect(at(0.49, 'heat')).toBe('exceeded');
    expect(at(1, 'input')).toBe('within');
  });

  it('takes what differs by rounding alone for equal, in watts as in milliwatts', () => {
    const at = (watts: number, rated: number) => {
      const links = [pad('p', 20, { rating: { power: powerW(rated), of: 'input' } })];
      return heats(cautionsOf({ upper: carrier(watts), links, instrument: { resistance: fifty } }))[0]
        ?.status;
    };
    expect(at(200.0000001, 200)).toBe('within');
    expect(at(200.000001, 200)).toBe('exceeded');
    expect(at(0.0010000005, 0.001)).toBe('within');
    expect(at(0.00100001, 0.001)).toBe('exceeded');
  });

  it('leaves out links that lose nothing, and says where no rating is known', () => {
    const links = [pad('through', 0), pad('p', 3)];
    expect(heats(cautionsOf({ upper: carrier(1), links, instrument: { resistance: fifty } }))).toMatchObject([
      { id: 'p', incident: 1, rating: undefined, status: 'unrated' },
    ]);
  });
});

describe('the level at the input', () => {
  const links = [pad('a', 20), pad('b', 10), pad('cable', 1, { removable: false })];
  const instrument = { resistance: fifty, damageLevel: levelDbm(10) };

  it('is told for the whole chain and without each removable link', () => {
    const told = levels(cautionsOf({ upper: carrier(1), links, instrument }));
    expect(told.map((c) => [c.without, Math.round(c.level), c.status])).toEqual([
      [undefined, -1, 'within'],
      ['a', 19, 'exceeded'],
      ['b', 9, 'within'],
    ]);
    expectWithin(told[1]?.margin ?? 0, -9, 1e-9);
  });

  it('without a link is higher by just what the link took', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 40, noNaN: true }), (a) => {
        const told = levels(cautionsOf({ upper: carrier(1), links: [pad('p', a), pad('q', 3)], instrument }));
        expectWithin((told[1]?.level ?? 0) - (told[0]?.level ?? 0), a, 1e-9);
      }),
    );
  });

  it('is within on the damage level itself and exceeded above it', () => {
    const scope = { resistance: fifty, damageLevel: voltsToLevel({ volts: voltsRms(5), resistance: fifty }) };
    const status = (watts: number) =>
      levels(cautionsOf({ upper: carrier(watts), links: [], instrument: scope }))[0]?.status;
    expect(status(0.5)).toBe('within');
    expect(status(0.500001)).toBe('exceeded');
  });

  it('counts the peak envelope, while heat counts the mean', () => {
    const upper = { mean: powerW(1), peakEnvelope: powerW(2) };
    const cautions = cautionsOf({ upper, links: [pad('p', 10)], instrument });
    expectNear(heats(cautions)[0]?.incident ?? 0, 1);
    expectPrinted(levels(cautions)[0]?.level ?? 0, 23.01, 2);
  });

  it('has no margin where no damage level is known', () => {
    const told = cautionsOf({ upper: carrier(1), links: [], instrument: { resistance: fifty } });
    expect(levels(told)).toMatchObject([{ damageLevel: undefined, margin: undefined, status: 'unrated' }]);
  });

  it('leaves out one of two links that share a name at a time', () => {
    const told = levels(cautionsOf({ upper: carrier(1), links: [pad('p', 10), pad('p', 20)], instrument }));
    expect(told.map((c) => Math.round(c.level))).toEqual([0, 10, 20]);
  });
});

describe('volts at the input', () => {
  it('are 10 V peak for 1 W in 50 ohm, and 20 V reverse on a detector', () => {
    const instrument = {
      resistance: fifty,
      largestPeak: voltsPeak(9),
      detector: { largestReverse: voltsPeak(30) },
    };
    const told = cautionsOf({ upper: carrier(1), links: [], instrument }).slice(1);
    expect(told).toMatchObject([
      { code: 'inputPeak', largest: 9, status: 'exceeded', without: undefined },
      { code: 'diodeReverse', largest: 30, status: 'within', without: undefined },
    ]);
    expectNear(told[0] && 'volts' in told[0] ? told[0].volts : 0, 10, 1e-9);
    expectNear(told[1] && 'volts' in told[1] ? told[1].volts : 0, 20, 1e-9);
  });

  it('speak of no diode where there is no detector, and of no rating where none is stated', () => {
    const plain = cautionsOf({ upper: carrier(1), links: [], instrument: { resistance: fifty } });
    expect(plain.map((c) => c.code)).toEqual(['inputLevel', 'inputPeak']);
    const bare = cautionsOf({
      upper: carrier(1),
      links: [],
      instrument: { resistance: fifty, detector: {} },
    });
    expect(bare[2]).toMatchObject({ code: 'diodeReverse', largest: undefined, status: 'unrated' });
  });

  it('double when the load has four times the resistance', () => {
    const peak = (r: number) => {
      const told = cautionsOf({ upper: carrier(1), links: [], instrument: { resistance: ohms(r) } })[1];
      return told && 'volts' in told ? told.volts : 0;
    };
    expectNear(peak(200), 2 * peak(50), 1e-12);
  });
});

describe('a chain without end', () => {
  it('of a hundred pads of 60 dB still has its cautions', () => {
    const links = Array.from({ length: 100 }, (_, i) => pad(`${i}`, 60));
    const instrument = { resistance: fifty, damageLevel: levelDbm(0) };
    const told = cautionsOf({ upper: carrier(1), links, instrument });
    expect(heats(told)).toHaveLength(100);
    expect(levels(told)).toHaveLength(101);
    expectWithin(levels(told)[0]?.level ?? 0, 30 - 6000, 1e-9);
    expect(exceeded(told)).toEqual([]);
  });
});

describe('the list of exceeded limits', () => {
  it("holds what the club's 500 mW transmitter would do to a 50 ohm input good for 5 V RMS", () => {
    const upper = carrier(levelToPower(levelDbm(28.5)));
    const instrument = { resistance: fifty, damageLevel: levelDbm(27) };
    expect(exceeded(cautionsOf({ upper, links: [], instrument }))).toMatchObject([{ code: 'inputLevel' }]);
    expect(exceeded(cautionsOf({ upper, links: [pad('p', 20)], instrument }))).toMatchObject([
      { without: 'p' },
    ]);
  });
});

describe('the upper power', () => {
  it('is the higher of the specification and the estimate with its uncertainty', () => {
    const measured = { estimate: levelDbm(27), expanded: gainDb(2) };
    expect(upperLevel({ specification: levelDbm(28.5) })).toBe(28.5);
    expect(upperLevel({ measured })).toBe(29);
    expect(upperLevel({ specification: levelDbm(28.5), measured })).toBe(29);
    expect(upperLevel({ specification: levelDbm(30), measured })).toBe(30);
  });

  it('is not made up where neither is known', () => {
    expect(() => upperLevel({})).toThrow(
      new RangeError('upperLevel: specification or measured must be given, got "neither"'),
    );
  });
});

describe('forbidden chains', () => {
  const instrument = { resistance: fifty };

  it('a peak envelope below the mean is refused', () => {
    const upper = { mean: powerW(2), peakEnvelope: powerW(1) };
    expect(() => cautionsOf({ upper, links: [], instrument })).toThrow(
      new RangeError('cautionsOf: upper.peakEnvelope must not be below upper.mean, got "1 below 2"'),
    );
  });

  it('gains the wrong way round are refused, and the link is named', () => {
    const links = [pad('p', 10, { highestGain: gainDb(-11), lowestGain: gainDb(-9) })];
    expect(() => cautionsOf({ upper: carrier(1), links, instrument })).toThrow(
      new RangeError('cautionsOf: lowestGain must not be above highestGain, got "p"'),
    );
  });
});
