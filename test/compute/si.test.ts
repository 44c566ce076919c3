import { describe, expect, it } from 'vitest';
import {
  CONVENTIONAL_1990,
  caesiumPeriods,
  changeOf2019,
  chargesPerSecond,
  josephsonConstantHzPerV,
  lightTimeS,
  thermalNoiseLevel,
  vonKlitzingOhm,
} from '../../src/compute/si.ts';
import { DEFINITION_EVENTS, inchInMillimetres } from '../../src/compute/si-history.ts';
import {
  constantsOf,
  definingConstant,
  numberOfConstants,
  partsOf,
  type SiUnit,
} from '../../src/compute/si-units.ts';
import { expectNear, expectPrinted } from './near.ts';

const units: SiUnit[] = [
  'second',
  'metre',
  'kilogram',
  'ampere',
  'kelvin',
  'newton',
  'joule',
  'watt',
  'coulomb',
  'volt',
  'ohm',
];

describe('the tree of units', () => {
  it('holds the constants of the SI Brochure, 9th edition, exactly', () => {
    expect(definingConstant('caesiumFrequency')).toBe(9192631770);
    expect(definingConstant('lightSpeed')).toBe(299792458);
    expect(definingConstant('planck')).toBe(6.62607015e-34);
    expect(definingConstant('elementaryCharge')).toBe(1.602176634e-19);
    expect(definingConstant('boltzmann')).toBe(1.380649e-23);
  });

  it.each([
    ['second', { caesiumFrequency: -1 }],
    ['metre', { lightSpeed: 1, caesiumFrequency: -1 }],
    ['kilogram', { planck: 1, caesiumFrequency: 1, lightSpeed: -2 }],
    ['ampere', { elementaryCharge: 1, caesiumFrequency: 1 }],
    ['kelvin', { planck: 1, caesiumFrequency: 1, boltzmann: -1 }],
    ['joule', { planck: 1, caesiumFrequency: 1 }],
    ['watt', { planck: 1, caesiumFrequency: 2 }],
    ['coulomb', { elementaryCharge: 1 }],
    ['volt', { planck: 1, caesiumFrequency: 1, elementaryCharge: -1 }],
    ['ohm', { planck: 1, elementaryCharge: -2 }],
  ] as const)('ends for a %s at its defining constants (SI Brochure, 2.3.1)', (unit, powers) => {
    expect(Object.fromEntries(constantsOf(unit))).toEqual(powers);
  });

  it.each(units)('gives one %s back from its number and its constants', (unit) => {
    let product = numberOfConstants(unit);
    for (const [constant, power] of constantsOf(unit)) product *= definingConstant(constant) ** power;
    expectNear(product, 1, 1e-14);
  });

  it('makes a metre of 30.663 319 wavelengths of the caesium transition', () => {
    expectPrinted(numberOfConstants('metre'), 30.6633189884984, 12);
  });

  it('makes volt times ampere a watt, and volt over ampere an ohm', () => {
    const n = numberOfConstants;
    expectNear(n('volt') * n('ampere'), n('watt'), 1e-14);
    expectNear(n('volt') / n('ampere'), n('ohm'), 1e-14);
    expectNear(n('newton') * n('metre'), n('joule'), 1e-14);
    expectNear(n('kilogram') * n('metre') ** 2 * n('second') ** -3, n('watt'), 1e-13);
  });

  it('goes down one step at a time', () => {
    expect(partsOf('volt')).toEqual([
      { of: 'watt', power: 1 },
      { of: 'ampere', power: -1 },
    ]);
    expect(partsOf('second')).toEqual([{ of: 'caesiumFrequency', power: -1 }]);
  });
});

describe('volt and ohm of the quantum standards (SI Brochure, Appendix 2)', () => {
  it('are K_J = 483 597.848 416 984 GHz/V and R_K = 25 812.807 459 3045 ohm', () => {
    expectNear(josephsonConstantHzPerV(), 483597.848416984e9, 1e-15);
    expectNear(vonKlitzingOhm(), 25812.8074593045, 1e-15);
  });

  it('lie 1.066 65e-7 below K_J-90 and 1.779 3e-8 above R_K-90', () => {
    expect(CONVENTIONAL_1990).toEqual({ josephsonHzPerV: 483597.9e9, vonKlitzingOhm: 25812.807 });
    expectPrinted(1e7 * changeOf2019().volt, 1.06665, 5);
    // Printed 17.793e-9: cut off, not rounded; (25 812.807 459 304 506 66 - 25 812.807)/25 812.807 is 1.779 367e-8.
    expectPrinted(1e8 * changeOf2019().ohm, 1.779367, 6);
    expect(Math.floor(1e12 * changeOf2019().ohm)).toBe(17793);
  });

  it('move a power of U²/R by twice the one less the other: 195.53655e-9, by hand 2 x 106.66511 - 17.79367', () => {
    const { volt, ohm, watt } = changeOf2019();
    expectPrinted(1e9 * watt, 195.53655, 5);
    expect(Math.abs(watt - (2 * volt - ohm))).toBeLessThan(2e-14);
  });
});

describe('counting', () => {
  it('finds 6.241 509 074e18 charges a second in an ampere', () => {
    expectNear(chargesPerSecond(1), 6.24150907446076e18, 1e-14);
    expectNear(chargesPerSecond(-2), -2 * 6.24150907446076e18, 1e-14);
  });

  it('finds 9 192 631 770 caesium periods in a second, a third of a nanosecond of light in 0.1 m', () => {
    expect(caesiumPeriods(1)).toBe(9192631770);
    expect(caesiumPeriods(0.5)).toBe(4596315885);
    expectNear(lightTimeS(299792458), 1, 1e-15);
    expectPrinted(1e9 * lightTimeS(0.1), 0.33, 2);
  });

  it.each([chargesPerSecond, caesiumPeriods, lightTimeS])('refuses what is no number', (count) => {
    expect(() => count(Number.NaN)).toThrow(/^\w+: \w+ must be a finite number, got NaN$/);
  });
});

describe('thermal noise', () => {
  it.each([
    [290, -173.975187],
    [293.15, -173.928268],
  ])('at %f K is %f dBm in 1 Hz', (temperatureK, dbm) => {
    expectPrinted(thermalNoiseLevel({ temperatureK, bandwidthHz: 1 }), dbm, 6);
  });

  it('grows by 10 dB with ten times the bandwidth', () => {
    const at = (bandwidthHz: number) => thermalNoiseLevel({ temperatureK: 290, bandwidthHz });
    expectNear(at(2500) - at(250), 10, 1e-12);
  });

  it('is refused without temperature or bandwidth', () => {
    expect(() => thermalNoiseLevel({ temperatureK: 0, bandwidthHz: 1 })).toThrow(
      new RangeError('thermalNoiseLevel: temperatureK must be > 0, got 0'),
    );
    expect(() => thermalNoiseLevel({ temperatureK: 290, bandwidthHz: -1 })).toThrow(
      new RangeError('thermalNoiseLevel: bandwidthHz must be > 0, got -1'),
    );
  });
});

describe('the history of definitions', () => {
  it('says of what is no number in print where it is from, and has none from memory after 1948', () => {
    for (const { year, source } of DEFINITION_EVENTS)
      expect(source === 'fromMemory', String(year)).toBe([1799, 1893, 1948].includes(year));
    const first = (unit: string) => DEFINITION_EVENTS.find((event) => event.unit === unit)?.year;
    expect([first('metre'), first('kilogram'), first('inch'), first('second')]).toEqual([
      1799, 1799, 1893, 1960,
    ]);
  });

  it('stands in order of time', () => {
    const years = DEFINITION_EVENTS.map(({ year }) => year);
    expect(years).toEqual([...years].sort((a, b) => a - b));
  });

  it('ends at the constants in force', () => {
    const last = (unit: string) => DEFINITION_EVENTS.filter((event) => event.unit === unit).at(-1);
    const numberOf = (unit: string) => {
      const event = last(unit);
      return event && 'value' in event ? event.value : undefined;
    };
    expect(numberOf('metre')).toBe(definingConstant('lightSpeed'));
    expect(numberOf('second')).toBe(definingConstant('caesiumFrequency'));
    expect(numberOf('kilogram')).toBe(definingConstant('planck'));
    expect(numberOf('ampere')).toBe(definingConstant('elementaryCharge'));
    expect(numberOf('inch')).toBe(inchInMillimetres('international1959'));
  });

  it('ties every unit in which the tree of a watt, a volt or an ohm ends, so that no date is missing', () => {
    const ends = (unit: SiUnit): SiUnit[] => {
      const below = partsOf(unit).flatMap(({ of }) => units.filter((one) => one === of));
      const rests = partsOf(unit).length > below.length;
      return [...(rests ? [unit] : []), ...below.flatMap(ends)];
    };
    const dated: string[] = DEFINITION_EVENTS.map(({ unit }) => unit);
    expect(new Set(ends('volt'))).toEqual(new Set(['second', 'metre', 'kilogram', 'ampere']));
    for (const unit of (['watt', 'volt', 'ohm'] as const).flatMap(ends)) expect(dated).toContain(unit);
  });

  it('makes a yard of 36 inches 0.9144 m (addendum to NBS Circular 572), the US inch 2 ppm longer', () => {
    expectNear((36 * inchInMillimetres('international1959')) / 1000, 0.9144, 1e-15);
    expectPrinted(inchInMillimetres('us1893'), 25.4000508, 7);
    expectPrinted(1e6 * (inchInMillimetres('us1893') / inchInMillimetres('international1959') - 1), 2, 1);
  });
});
