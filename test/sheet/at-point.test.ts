import { describe, expect, it } from 'vitest';
import { levelDbm, ohms } from '#compute';
import { measurementOf, sheetAt } from '../../src/sheet/at-point.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { clubMeasurement, sisterMeasurement } from '../../src/sheet/club-measurement.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import { COLUMNS_OF, METHODS, UNITS_OF } from '../../src/sheet/method.ts';
import { usualLinks } from '../../src/sheet/method-links.ts';
import { outcomeOf, toModel } from '../../src/sheet/to-model.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import { expectWithin } from '../compute/near.ts';
import { measurementBy, stated, within } from './any-measurement.ts';

describe('a sheet as a measurement of one point', () => {
  it.each([
    ['the club’s', clubSheet],
    ['two pads into a receiver', twoPadsSheet],
  ])('and back has the same sums: %s', (_name, sheet) => {
    const back = sheetAt(measurementOf(sheet()), 'point1');
    const [mine, its] = [chainOf(back).result, chainOf(sheet()).result];
    expect(mine.propagation).toEqual(its.propagation);
    expect(mine.worstCase).toEqual(its.worstCase);
    expect(mine.estimate).toBe(its.estimate);
    expect(back.title).toBe(sheet().title);
    expect(back.damageLevelDbm).toBe(sheet().damageLevelDbm);
  });

  it('is refused where it is by another method than pads into a meter', () => {
    const scope = sheetAt(clubMeasurement('oscilloscope'), 'point1');
    expect(() => measurementOf(scope)).toThrow(
      new RangeError('measurementOf: sheet must be by pads into a meter, got "oscilloscope"'),
    );
  });
});

describe('the sheet of a point', () => {
  const two = {
    ...clubMeasurement('padsIntoMeter'),
    points: clubMeasurement('padsIntoMeter').points.flatMap((point) => [
      { ...point, label: 'high' },
      {
        ...point,
        id: 'point2',
        label: 'low',
        specification: { upper: 24 },
        columns: { ...point.columns, readings: [3] },
      },
    ]),
  };

  it('has its own specification and readings, and its name where there are several', () => {
    const low = sheetAt(two, 'point2');
    expect(low).toMatchObject({ specification: { upper: 24 }, readings: [3] });
    expect(low.title).toBe('The club’s hidden transmitter, low');
    expect(sheetAt(clubMeasurement('padsIntoMeter'), 'point1').title).toBe('The club’s hidden transmitter');
  });

  it('leaves out links that are switched off: neither their loss nor their statement counts', () => {
    const off = {
      ...two,
      links: two.links.map((link) => (link.id === 'pad' ? { ...link, off: true as const } : link)),
    };
    expect(sheetAt(off, 'point1').links.map(({ id }) => id)).not.toContain('pad');
    const level = (of: typeof two) => toModel(sheetAt(of, 'point1')).constant;
    expectWithin(level(two) - level(off), 20, 1e-12);
  });

  it('is refused for a point that is not there', () => {
    expect(() => sheetAt(two, 'point3')).toThrow(
      new RangeError('sheetAt: point must be one of the measurement, got "point3"'),
    );
  });

  it('has the level that each reading alone would say', () => {
    const scope = measurementBy('oscilloscope', {
      setup: { resistance: ohms(50) },
      columns: { readings: [20, 14.142135623730951] },
    });
    const [one, half] = sheetAt(scope, 'point1').readings;
    expectWithin(one ?? 0, 30, 1e-9); // 20 Vpp on 50 ohm is 1 W
    expectWithin(half ?? 0, 10 * Math.log10(500), 1e-9);
  });
});

describe('the model of a sheet', () => {
  it('begins with what the method brings, then has the links in their order, the scatter last', () => {
    const inputs = (method: Parameters<typeof clubMeasurement>[0]) =>
      toModel(sheetAt(clubMeasurement(method), 'point1')).inputs.map(({ id }) => id);
    expect(inputs('oscilloscope')).toEqual([
      'rollOff',
      'gain',
      'flatness',
      'trace',
      'harmonics',
      'load',
      'probe',
      'readings',
    ]);
    expect(inputs('inLine')).toEqual(['scale', 'response', 'directivity', 'needle']);
  });

  it('refuses a link in a unit that its method has no reading in, and a method out of range', () => {
    const odd = measurementBy('inLine', {
      links: [stated({ id: 'odd', stated: within(0.1), unit: 'kelvinRf' })],
    });
    expect(() => outcomeOf(sheetAt(odd, 'point1'))).toThrow(/unit must be one of dB/);
    expect(() => toModel(sheetAt(sisterMeasurement(), 'point1'))).toThrow(
      new RangeError('toModel: method must be in range, got "aboveBandwidth"'),
    );
  });

  it('turns the shared cause against a link where it acts the other way round', () => {
    const cause = 'meter';
    const pair = (sensitivity: 1 | -1) =>
      measurementBy('padsIntoMeter', {
        links: [
          stated({ id: 'first', stated: within(0.3), cause }),
          stated({ id: 'second', stated: within(0.3), cause, sensitivity }),
        ],
      });
    const u = (sensitivity: 1 | -1) =>
      chainOf(sheetAt(pair(sensitivity), 'point1')).result.propagation.standardUncertainty;
    expectWithin(u(1), 0.6 / Math.sqrt(3), 1e-12);
    expectWithin(u(-1), 0, 1e-12);
  });
});

describe('the club’s transmitter by each method', () => {
  it.each(METHODS)('is 27 dBm to within what the method may be wrong by: %s', (method) => {
    const { result } = chainOf(sheetAt(clubMeasurement(method), 'point1'));
    expect(Math.abs(result.estimate - 27)).toBeLessThan(result.propagation.expanded);
    expect(clubMeasurement(method).links.every(({ assumed }) => assumed === undefined)).toBe(true);
  });

  it.each(METHODS)('has a reading in every column that is asked for: %s', (method) => {
    const [point] = clubMeasurement(method).points;
    for (const column of COLUMNS_OF[method]) expect(point?.columns[column].length).toBeGreaterThan(0);
  });

  it('never goes straight into an input that stands 5 V RMS: its sister on 145 MHz shows out of range, not a number', () => {
    expect(outcomeOf(sheetAt(sisterMeasurement(), 'point1'))).toMatchObject({
      inRange: false,
      reason: { code: 'aboveBandwidth' },
    });
  });
});

describe('the links that a method usually brings', () => {
  it.each(METHODS)(
    'are all assumed, of ids of their own, and in units that the method reads in: %s',
    (method) => {
      const links = usualLinks(method);
      expect(links.length).toBeGreaterThan(0);
      expect(links.every(({ assumed }) => assumed)).toBe(true);
      expect(new Set(links.map(({ id }) => id)).size).toBe(links.length);
      const units: readonly string[] = UNITS_OF[method];
      for (const { unit } of links) expect(units).toContain(unit);
      // ids of what the method and the readings bring themselves stay free
      for (const { id } of links) expect(['rollOff', 'scale', 'readings']).not.toContain(id);
    },
  );

  it.each(METHODS)(
    'leave a band that a bench of this kind has, a tenth of a dB to one and a half: %s',
    (method) => {
      const measurement = { ...clubMeasurement(method), links: usualLinks(method) };
      const { expanded } = chainOf(sheetAt(measurement, 'point1')).result.propagation;
      expect(expanded).toBeGreaterThan(0.05);
      expect(expanded).toBeLessThan(1.5);
    },
  );
});

it('takes a measured level between what the meter holds at', () => {
  const bounded = measurementBy('padsIntoMeter', {
    setup: { floor: levelDbm(8) },
    columns: { readings: [7] },
  });
  expect(outcomeOf(sheetAt(bounded, 'point1'))).toMatchObject({ reason: { code: 'belowFloor', limit: 8 } });
});
