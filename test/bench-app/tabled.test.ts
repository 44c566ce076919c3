import { describe, expect, it } from 'vitest';
import { decodeEntries, encodeEntries } from '../../src/bench/address/address.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { pulledLink } from '../../src/bench/state/pull.ts';
import { statedText } from '../../src/bench/words/stated-link-text.ts';
import { sheetAt } from '../../src/sheet/at-point.ts';
import type { LinkEntries, PointEntries } from '../../src/sheet/entries.ts';
import { firstNumber, resultsOf, typedEntries, typedMeasurement } from './typed-sheet.ts';

const TABLE = 'MHz; dB; dB\n1; 0.1; 0.06\n30; -0.2; 0.1';
const tabled = (change: Partial<LinkEntries> = {}): Partial<LinkEntries> => ({
  label: 'Meter',
  kind: 'meter',
  form: 'corrections',
  by: 'frequency',
  table: TABLE,
  ...change,
});
const problemOf = (
  change: Partial<LinkEntries>,
  points: readonly Partial<PointEntries>[] = [{ readings: '7', frequency: '3.58' }],
) => {
  const { problems } = readMeasurement(typedEntries({ points, links: [tabled(change)] }));
  expect(problems).toHaveLength(1);
  return problems[0];
};

describe('a link stated by a table of corrections', () => {
  it('corrects each point by its own frequency', () => {
    const points = [
      { readings: '7', frequency: '1 MHz' },
      { readings: '7', frequency: '30 MHz' },
    ];
    const levels = resultsOf(typedMeasurement({ points, links: [tabled()] })).map((result) =>
      result.inRange ? result.result.chain.result.estimate : Number.NaN,
    );
    expect(levels[0]).toBeCloseTo(7.1, 12);
    expect(levels[1]).toBeCloseTo(6.8, 12);
  });

  it('is as sure as U over k of the line that is less sure', () => {
    const { result } = firstNumber({
      points: [{ readings: '7', frequency: '3.58' }],
      links: [tabled({ factor: '2.5' })],
    });
    expect(result.chain.result.propagation.standardUncertainty).toBeCloseTo(0.1 / 2.5, 12);
  });

  it('is told in a text by how many places it has, and by its largest U', () => {
    const [link] = typedMeasurement({
      points: [{ readings: '7', frequency: '3.58' }],
      links: [tabled()],
    }).links;
    if (link === undefined) throw new Error('wish a link');
    expect(statedText('ascii', link)).toBe('corrections at 2 frequencies, at most U 0.1 dB, k = 2');
  });

  it('keeps its correction when its handle is dragged: what stood in the table stands in the loss', () => {
    const measurement = typedMeasurement({
      points: [{ readings: '7', frequency: '30' }],
      links: [tabled({ loss: '20' })],
    });
    const pulled = pulledLink({ sheet: sheetAt(measurement, 'point1'), id: 'link1', expandedDb: 0.5 });
    expect(pulled).toMatchObject({ form: 'expanded', amount: '0.5', loss: '19.8' });
  });

  it('travels in an address with the instrument that it was taken from', () => {
    const entries = typedEntries({
      links: [tabled({ instrument: 'a1', part: 'drift', calibrated: '2026-05-09', interval: '12' })],
    });
    const { entries: opened, problems } = decodeEntries(encodeEntries(entries) ?? '');
    expect(problems).toEqual([]);
    expect(opened.links).toEqual(entries.links);
  });
});

describe('what is wrong with a table is told beside it', () => {
  it.each([
    ['', /Two lines or more/],
    ['3.58; 0.1; 0.06', /Two lines or more/],
    ['1; 0.1; 0.06\n30; 0.1', /^Line 2: .*not three numbers/],
    ['1; 0.1; 0.06\n30; x; 0.1', /^Line 2: “x” is not a number/],
    ['1; 0.1; 0.06\n1 MHz; 0.2; 0.1', /1\sMHz stands there twice/],
    ['1; 0.1; -0.06\n30; 0.1; 0.1', /^Line 1: .*smallest/],
  ])('%j', (table, sentence) => {
    const problem = problemOf({ table });
    expect(problem?.path).toBe('link1.table');
    expect(problem?.problem).toMatch(sentence);
  });

  it('a unit of readings is told beside the unit', () => {
    expect(problemOf({ unit: 'voltsPeakToPeak' })).toMatchObject({ path: 'link1.unit' });
  });

  it('a point beyond its ends is named, with the ends', () => {
    expect(problemOf({}, [{ readings: '7', frequency: '145 MHz' }])?.problem).toMatch(
      /from 1\sMHz to 30\sMHz, and this point lies at 145\sMHz/,
    );
    const points = [
      { readings: '7', frequency: '3.58' },
      { readings: '7', frequency: '145', label: 'Sister' },
    ];
    expect(problemOf({}, points)?.problem).toMatch(/Sister lies at/);
  });

  it('a point without a frequency is asked for one', () => {
    expect(problemOf({}, [{ readings: '7' }])?.problem).toMatch(/this point has none/);
  });

  it('a level beyond its ends is one too', () => {
    expect(problemOf({ by: 'level', table: '-20 0.3 0.1\n0 0.1 0.1' })?.problem).toMatch(
      /from −20\sdBm to 0\sdBm, and this point lies at 7\sdBm/,
    );
  });

  it('a link that is left out holds nothing up', () => {
    const { problems } = readMeasurement(
      typedEntries({
        points: [{ readings: '7', frequency: '145' }],
        links: [tabled({ off: true })],
      }),
    );
    expect(problems).toEqual([]);
  });
});
