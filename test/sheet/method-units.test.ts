import { describe, expect, it } from 'vitest';
import {
  dcSubstitution,
  gainDb,
  inLineLevel,
  levelDbm,
  type MethodOutcome,
  mean,
  oscilloscope,
  padsIntoMeter,
  peakDetector,
  powerW,
  voltsPeakToPeak,
} from '#compute';
import { sheetAt } from '../../src/sheet/at-point.ts';
import { clubMeasurement, sisterMeasurement } from '../../src/sheet/club-measurement.ts';
import { influenceOf, inUnits, METER_UNITS } from '../../src/sheet/influence-of.ts';
import { type LinkUnit, METHODS, type MethodKind, shownBy, UNITS_OF } from '../../src/sheet/method.ts';
import { usualLinks } from '../../src/sheet/method-links.ts';
import { scatterOf } from '../../src/sheet/scatter.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { outcomeOf, toModel } from '../../src/sheet/to-model.ts';
import { expectWithin } from '../compute/near.ts';
import { measurementBy, stated, within } from './any-measurement.ts';

const lg10 = (ratio: number): number => 10 * Math.log10(ratio);
const lg20 = (ratio: number): number => 20 * Math.log10(ratio);

/** Readings for hand calculation: round numbers, one each. */
const ROUND = {
  padsIntoMeter: { columns: { readings: [7] } },
  oscilloscope: { columns: { readings: [20] } },
  peakDetector: { columns: { readings: [9.5] }, setup: { diodeDropV: 0.5 } },
  inLine: { columns: { readings: [0.5], reflected: [0] } },
  dcSubstitution: { columns: { readings: [10], riseDc: [10], volts: [5], amperes: [0.1] } },
} as const;

/** Where the limits of a link end in dB of power, lower and upper. */
function endsOf(method: MethodKind, unit: LinkUnit, halfWidth: number) {
  const links = [stated({ id: 'part', stated: within(halfWidth), unit, percentOf: 'reading' })];
  const model = toModel(sheetAt(measurementBy(method, { ...ROUND[method], links }), 'point1'));
  const input = model.inputs.find(({ id }) => id === 'part');
  if (input === undefined) throw new Error('wish the part among the inputs');
  return input.distribution.limits;
}

/**
 * What limits in each unit come to by hand: power goes as volts squared, as one over the resistance, as the rise with RF, and as one
 * over the rise with DC. Every row is 2 % of what was read, but for decibels.
 */
const BY_HAND: readonly (readonly [MethodKind, LinkUnit, number, number, number])[] = [
  ...METHODS.map((method) => [method, 'dB', 0.3, -0.3, 0.3] as const),
  ...METHODS.map((method) => [method, 'percentOfPower', 2, lg10(0.98), lg10(1.02)] as const),
  ...(['padsIntoMeter', 'oscilloscope', 'peakDetector', 'inLine'] as const).map(
    (method) => [method, 'percentOfVolts', 2, lg20(0.98), lg20(1.02)] as const,
  ),
  ...(['oscilloscope', 'peakDetector'] as const).map(
    (method) => [method, 'percentOfResistance', 2, -lg10(1.02), -lg10(0.98)] as const,
  ),
  ['oscilloscope', 'voltsPeakToPeak', 0.4, lg20(0.98), lg20(1.02)],
  ['peakDetector', 'volts', 0.2, lg20(0.98), lg20(1.02)], // of 9.5 V and the drop of 0.5 V
  ['dcSubstitution', 'percentOfDcVolts', 2, lg10(0.98), lg10(1.02)],
  ['dcSubstitution', 'percentOfDcAmperes', 2, lg10(0.98), lg10(1.02)],
  ['dcSubstitution', 'dcVolts', 0.1, lg10(0.98), lg10(1.02)],
  ['dcSubstitution', 'dcAmperes', 0.002, lg10(0.98), lg10(1.02)],
  ['dcSubstitution', 'kelvinRf', 0.2, lg10(0.98), lg10(1.02)],
  ['dcSubstitution', 'kelvinDc', 0.2, -lg10(1.02), -lg10(0.98)],
];

describe('limits of a link in the units of its method', () => {
  it.each(BY_HAND)(
    'by %s in %s of %d end where a sum by hand ends',
    (method, unit, halfWidth, lower, upper) => {
      const ends = endsOf(method, unit, halfWidth);
      expectWithin(ends.lower, lower, 1e-9);
      expectWithin(ends.upper, upper, 1e-9);
    },
  );

  it('have a row above for every unit that a method takes', () => {
    for (const method of METHODS)
      expect(
        BY_HAND.filter(([of]) => of === method)
          .map(([, unit]) => unit)
          .toSorted(),
      ).toEqual([...UNITS_OF[method]].toSorted());
  });

  it.each(METHODS)(
    'in any unit of another method are refused by name, not taken for its own: %s',
    (method) => {
      const every: readonly LinkUnit[] = METHODS.flatMap((of) => [...UNITS_OF[of]]);
      const own: readonly LinkUnit[] = UNITS_OF[method];
      const foreign = [...new Set(every)].filter((unit) => !own.includes(unit));
      expect(foreign.length).toBeGreaterThan(0);
      for (const unit of foreign) expect(() => endsOf(method, unit, 0.01)).toThrow(`got "${unit}"`);
    },
  );

  it('of the true value turn over: what the reading may be too high by, the level may be too low by', () => {
    const links = [stated({ id: 'part', stated: within(2), unit: 'percentOfPower', percentOf: 'trueValue' })];
    const model = toModel(
      sheetAt(measurementBy('padsIntoMeter', { ...ROUND.padsIntoMeter, links }), 'point1'),
    );
    expectWithin(model.inputs[0]?.distribution.limits.lower ?? 0, -lg10(1.02), 1e-9);
    expectWithin(model.inputs[0]?.distribution.limits.upper ?? 0, -lg10(0.98), 1e-9);
  });
});

/** What the method's own sums give for a sheet of the club, called as a reader of the sums would call them. */
function direct(sheet: Sheet): MethodOutcome {
  const influences = [...sheet.links.map(influenceOf), ...scatterOf(sheet)];
  const columns = sheet.method?.columns;
  const setup = sheet.method?.setup;
  if (columns === undefined || setup === undefined) throw new Error('wish a sheet with its method');
  const reading = mean(columns.readings);
  switch (setup.method) {
    case 'padsIntoMeter':
      return padsIntoMeter({
        reading: levelDbm(reading),
        corrections: [],
        gains: sheet.links.map(({ lossDb }) => gainDb(0 - lossDb)),
        influences: inUnits(influences, METER_UNITS),
      });
    case 'oscilloscope':
      return oscilloscope({
        ...setup,
        peakToPeak: voltsPeakToPeak(reading),
        frequencyHz: sheet.method?.frequencyHz ?? 0,
        influences: inUnits(influences, UNITS_OF.oscilloscope),
      });
    case 'peakDetector':
      return peakDetector({
        ...setup,
        detectedV: reading,
        influences: inUnits(influences, UNITS_OF.peakDetector),
      });
    case 'inLine':
      return inLineLevel({
        forward: { power: powerW(reading), ...setup.forward },
        reflected: { power: powerW(mean(columns.reflected)), ...setup.reflected },
        delivery: 'net',
        influences: inUnits(influences, UNITS_OF.inLine),
      });
    case 'dcSubstitution':
      return dcSubstitution({
        volts: mean(columns.volts),
        amperes: mean(columns.amperes),
        riseRfK: reading,
        riseDcK: mean(columns.riseDc),
        influences: inUnits(influences, UNITS_OF.dcSubstitution),
      });
  }
}

describe('the model of a sheet', () => {
  it.each(METHODS)('is the one that the sums of its method give: %s', (method) => {
    const sheet = sheetAt(clubMeasurement(method), 'point1');
    const mine = toModel(sheet);
    const its = direct(sheet);
    if (!its.inRange || its.model.kind !== 'sum') throw new Error('wish a sum');
    expectWithin(mine.constant, its.model.constant, 1e-12);
    expect(mine.inputs.map(({ id }) => id).toSorted()).toEqual(
      its.model.inputs.map(({ id }) => id).toSorted(),
    );
    for (const input of its.model.inputs) {
      const same = mine.inputs.find(({ id }) => id === input.id);
      if (sheet.links.some(({ id, reflections }) => id === input.id && reflections)) continue;
      expect(same?.distribution.limits).toEqual(input.distribution.limits);
      expect(same?.distribution.mean).toBe(input.distribution.mean);
      expect(same?.distribution.standardDeviation).toBe(input.distribution.standardDeviation);
      expect(same?.degreesOfFreedom).toBe(input.degreesOfFreedom);
    }
  });

  it('adds every loss of a link once, takes an amplifier off, and adds nothing for a comparison', () => {
    const links = [20, 0.1, -12, 0].map((lossDb, index) =>
      stated({ id: `l${index}`, stated: within(0.1), lossDb }),
    );
    for (const method of METHODS) {
      const level = (of: typeof links): number =>
        toModel(sheetAt(measurementBy(method, { ...ROUND[method], links: of }), 'point1')).constant;
      expectWithin(level(links) - level([]), 8.1, 1e-9);
    }
  });

  it('stays out of range with its reason, whatever the losses in front of the instrument', () => {
    const bounded = (reading: number) =>
      outcomeOf(
        sheetAt(
          measurementBy('padsIntoMeter', {
            setup: { floor: levelDbm(-60), largest: levelDbm(20) },
            columns: { readings: [reading] },
            links: [stated({ id: 'pad', stated: within(0.5), lossDb: 20 })],
          }),
          'point1',
        ),
      );
    expect(bounded(21)).toEqual({ inRange: false, reason: { code: 'aboveLargest', reading: 21, limit: 20 } });
    expect(bounded(-61)).toEqual({
      inRange: false,
      reason: { code: 'belowFloor', reading: -61, limit: -60 },
    });
    expect([bounded(20).inRange, bounded(-60).inRange]).toEqual([true, true]);
  });

  it.each([
    ['an open line', 'oscilloscope', { setup: { terminated: false } }, 'noTermination'],
    ['a detector with next to nothing', 'peakDetector', { columns: { readings: [0.5] } }, 'belowDetector'],
    [
      'a needle at the foot of its scale',
      'inLine',
      { columns: { readings: [0.1], reflected: [0] } },
      'fullScaleError',
    ],
  ] as const)('is none for %s', (_what, method, options, code) => {
    expect(outcomeOf(sheetAt(measurementBy(method, options), 'point1'))).toMatchObject({
      inRange: false,
      reason: { code },
    });
  });
});

describe('the club’s sister on 145 MHz', () => {
  it('is at 1.74 times what oscilloscope and probe pass together (1/√(1/100² + 1/150²) = 83.2 MHz), beyond three tenths', () => {
    const outcome = outcomeOf(sheetAt(sisterMeasurement(), 'point1'));
    if (outcome.inRange || outcome.reason.code !== 'aboveBandwidth')
      throw new Error('wish it above the bandwidth');
    expectWithin(outcome.reason.ratio, 145 * Math.hypot(1 / 100, 1 / 150), 1e-9);
    expect(outcome.reason.largest).toBe(0.3);
  });

  it('gives a number again on a frequency of the same oscilloscope that lies within', () => {
    const sister = sisterMeasurement();
    const at = (frequencyHz: number) =>
      outcomeOf(
        sheetAt({ ...sister, points: sister.points.map((point) => ({ ...point, frequencyHz })) }, 'point1'),
      );
    const edge = 0.3e6 / Math.hypot(1 / 100, 1 / 150);
    expect([at(edge * 0.999).inRange, at(edge * 1.001).inRange]).toEqual([true, false]);
  });

  it('is told apart from the club’s by title, conditions and specification point', () => {
    const [club, sister] = [clubMeasurement('oscilloscope'), sisterMeasurement()];
    expect(sister.title).not.toBe(club.title);
    expect(sister.measurand.conditions).toMatch(/^145 MHz/);
    expect(sister.points[0]?.frequencyHz).toBe(145e6);
    expect(sister.setup).toEqual(club.setup);
  });
});

describe('the links that a method brings', () => {
  it.each(METHODS)('are the same each time and nobody’s to change: %s', (method) => {
    expect(usualLinks(method)).toEqual(usualLinks(method));
    expect(usualLinks(method)[0]).not.toBe(usualLinks(method)[0]);
  });

  it.each(METHODS)(
    'each bring an uncertainty of their own, and none more than half a decibel: %s',
    (method) => {
      const measurement = { ...clubMeasurement(method), links: usualLinks(method) };
      const { inputs } = toModel(sheetAt(measurement, 'point1'));
      for (const { id } of usualLinks(method)) {
        const u = inputs.find((input) => input.id === id)?.distribution.standardDeviation ?? Number.NaN;
        expect(u, id).toBeGreaterThan(0);
        expect(u, id).toBeLessThan(0.5);
      }
    },
  );

  it('lose something only where pads and cable stand before a meter', () => {
    const lost = METHODS.map((method) => usualLinks(method).reduce((sum, { lossDb }) => sum + lossDb, 0));
    expectWithin(lost[0] ?? 0, 20.1, 1e-12);
    expect(lost.slice(1)).toEqual([0, 0, 0, 0]);
  });

  it('say 0.28 dB of a second harmonic at -30 dBc on one peak, 0.09 dB of a third at -40 dBc (peaks add in volts)', () => {
    const halfOf = (method: MethodKind): number => {
      const link = usualLinks(method).find(({ id }) => id === 'harmonics');
      return link?.stated.form === 'limits' ? link.stated.halfWidth : Number.NaN;
    };
    // A peak that is 10^(-30/20) higher, read as a power: 20 lg(1.0316) = 0.27 dB up, 0.28 dB down.
    expectWithin(halfOf('peakDetector'), -lg20(1 - 10 ** (-30 / 20)), 0.005);
    expectWithin(halfOf('oscilloscope'), -lg20(1 - 10 ** (-40 / 20)), 0.005);
  });
});

describe('what an instrument shows of a keyed transmitter', () => {
  it('is the mean by heat, the crest by a trace and a detector, and what it says itself by a meter', () => {
    expect(shownBy(clubMeasurement('dcSubstitution').setup)).toBe('mean');
    expect(shownBy(clubMeasurement('oscilloscope').setup)).toBe('peakEnvelope');
    expect(shownBy(clubMeasurement('peakDetector').setup)).toBe('peakEnvelope');
    for (const method of ['padsIntoMeter', 'inLine'] as const)
      for (const shows of ['mean', 'peakEnvelope'] as const)
        expect(shownBy(measurementBy(method, { setup: { shows } }).setup)).toBe(shows);
  });

  it.each([
    ['padsIntoMeter', 'mean', 'mean', 0],
    ['padsIntoMeter', 'mean', 'peakEnvelope', 3.565],
    ['padsIntoMeter', 'peakEnvelope', 'mean', -3.565],
    ['inLine', 'mean', 'peakEnvelope', 3.565],
    ['inLine', 'peakEnvelope', 'peakEnvelope', 0],
  ] as const)(
    'moves a level by %s showing %s where %s is meant: 10 lg(50/22) for PARIS',
    (method, shows, power, db) => {
      const measurement = measurementBy(method, { setup: { shows } });
      const level = (keying: 'keyDown' | 'parisWord') =>
        toModel(sheetAt({ ...measurement, measurand: { ...measurement.measurand, power, keying } }, 'point1'))
          .constant;
      expectWithin(level('parisWord') - level('keyDown'), db, 5e-4);
    },
  );
});
