import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PointWithResult, pointLabel, pointsInOrder } from '../../src/bench/words/point-order.ts';
import { chartPoints, coverageNote, pointRows, pointsSummary } from '../../src/bench/words/points-words.ts';
import type { Measurement, Point } from '../../src/sheet/measurement.ts';
import { anyComputed } from './any-measurement.ts';
import { resultsOf, type Typing, typedMeasurement } from './typed-sheet.ts';

const measured = (points: NonNullable<Typing['points']>): Measurement =>
  typedMeasurement({ points, links: [{ label: 'Meter', form: 'expanded' }] });
const ordered = (measurement: Measurement): readonly PointWithResult[] =>
  pointsInOrder('ascii', measurement.points, resultsOf(measurement));
/** Names with ordinary spaces. */
const namesOf = (measurement: Measurement): readonly string[] =>
  ordered(measurement).map(({ label }) => label.replace(/\s/g, ' '));
const bare: Point = {
  id: 'p',
  label: '',
  specification: {},
  columns: { readings: [], reflected: [], riseDc: [], volts: [], amperes: [] },
};

describe('the points of a sheet', () => {
  it('are called by their own name, else by their frequency, else by their place', () => {
    expect(pointLabel('ascii', { ...bare, label: 'top end', frequencyHz: 7.03e6 }, 0)).toBe('top end');
    expect(pointLabel('ascii', { ...bare, label: '  ', frequencyHz: 7.03e6 }, 0)).toBe('7.03 MHz');
    expect(pointLabel('ascii', { ...bare, frequencyHz: 136_500 }, 0)).toBe('0.1365 MHz');
    expect(pointLabel('ascii', bare, 2)).toBe('Point 3');
  });

  it('stand by frequency once each has one, else as they were typed, each with its own result', () => {
    fc.assert(
      fc.property(anyComputed, ({ measurement, results }) => {
        const inOrder = pointsInOrder('ascii', measurement.points, results);
        for (const { point, result } of inOrder) expect(result?.point).toBe(point);
        const hertz = inOrder.map(({ point }) => point.frequencyHz ?? 0);
        expect(hertz).toEqual(hertz.toSorted((a, b) => a - b));
        expect(inOrder).toHaveLength(measurement.points.length);
      }),
      { numRuns: 50 },
    );
    const mixed = measured([
      { readings: '27', frequency: '14' },
      { readings: '27' },
      { readings: '27', frequency: '7' },
    ]);
    expect(namesOf(mixed)).toEqual(['14 MHz', 'Point 2', '7 MHz']);
    const all = measured([
      { readings: '27', frequency: '14' },
      { readings: '27', frequency: '7' },
    ]);
    expect(namesOf(all)).toEqual(['7 MHz', '14 MHz']);
  });

  it('keep the place in the sheet in the name of one without a frequency', () => {
    const names = ordered(measured([{ readings: '27', label: 'a' }, { readings: '27' }]));
    expect(names.map(({ label }) => label)).toEqual(['a', 'Point 2']);
  });
});

describe('a row of the table', () => {
  it('is one for every point, whatever is known of it', () => {
    fc.assert(
      fc.property(anyComputed, fc.nat({ max: 3 }), ({ measurement, results }, known) => {
        const points = pointsInOrder('ascii', measurement.points, results.slice(0, known));
        const lines = pointRows('ascii', points);
        expect(lines.map(({ id }) => id)).toEqual(points.map(({ point }) => point.id));
        expect(lines.map(({ state }) => state)).toEqual(
          points.map(({ result }) =>
            result === undefined ? 'pending' : result.inRange ? 'numbered' : 'outOfRange',
          ),
        );
      }),
      { numRuns: 50 },
    );
  });

  it('says another k where few readings make it larger, and none where it is the usual one', () => {
    const [usual] = pointRows('ascii', ordered(measured([{ readings: '27' }])));
    expect(usual).toMatchObject({ estimate: '27.00 dBm', expanded: '+/-0.50 dB', dominant: 'Meter' });
    const alone = typedMeasurement({ points: [{ readings: '27.0 dBm\n27.1 dBm\n26.9 dBm' }] });
    // t for 95.45 % and 2 degrees of freedom is 4.53 (GUM, table G.2)
    expect(pointRows('ascii', ordered(alone))[0]).toMatchObject({
      expanded: expect.stringContaining('(k = 4.53, 95.45 %)'),
    });
  });

  it('of a reading that nothing is known of has no part that widens it', () => {
    expect(pointRows('ascii', ordered(typedMeasurement({})))[0]).toMatchObject({
      estimate: '27.00 dBm',
      dominant: 'nothing',
    });
  });

  it('has the reason in place of numbers where the method gives none', () => {
    const far = typedMeasurement({
      method: 'oscilloscope',
      sheet: { scopeBandwidth: '100' },
      points: [
        { readings: '14', frequency: '145' },
        { readings: '14', frequency: '3.58' },
      ],
    });
    const lines = pointRows('ascii', ordered(far));
    expect(lines.map(({ state }) => state)).toEqual(['numbered', 'outOfRange']);
    // 145 MHz of 100 MHz
    expect(lines[1]).toMatchObject({
      label: expect.stringMatching(/^145\sMHz$/),
      reason: expect.stringContaining('1.45'),
    });
    expect(lines[1]).not.toHaveProperty('estimate');
    expect(pointsSummary(ordered(far))).toBe(
      'Of the points, in the order of their frequencies, 1 is inside, 1 is out of the method’s range.',
    );
    expect(chartPoints(ordered(far))[1]).not.toHaveProperty('band');
  });
});

describe('what is said of all points together', () => {
  it('counts each of them once', () => {
    fc.assert(
      fc.property(anyComputed, fc.nat({ max: 3 }), ({ measurement, results }, known) => {
        const points = pointsInOrder('ascii', measurement.points, results.slice(0, known));
        const counts = [...pointsSummary(points).matchAll(/(\d+) (is|are) /g)];
        expect(counts.reduce((sum, [, count]) => sum + Number(count), 0)).toBe(points.length);
        for (const [, count, verb] of counts) expect(verb).toBe(count === '1' ? 'is' : 'are');
      }),
      { numRuns: 50 },
    );
  });

  it('says k and its probability once, as soon as one point has a number', () => {
    const points = ordered(measured([{ readings: '27' }, { readings: '27.5' }]));
    expect(coverageNote('ascii', points)).toContain('95.45 %');
    const pending = points.map((point) => ({ ...point, result: undefined }));
    expect(coverageNote('ascii', pending)).toBeUndefined();
    expect(coverageNote('ascii', [...pending, ...points])).toBe(coverageNote('ascii', points));
    expect(pointsSummary(pending)).toBe('Of the points 2 are still being worked out.');
  });

  it('draws a limit that is not there as one without end, and the band that decided about the mark in it', () => {
    const [point] = chartPoints(
      ordered(measured([{ readings: '27', specification: 'atMost', highest: '28' }])),
    );
    expect(point?.specification).toEqual({ lower: Number.NEGATIVE_INFINITY, upper: 28 });
    expect(point?.word).toBe('inside');
    expect(point?.band?.estimate).toBe(27);
    expect(point?.band?.lower).toBeCloseTo(26.5, 12);
    expect(point?.band?.upper).toBeCloseTo(27.5, 12);
  });
});
