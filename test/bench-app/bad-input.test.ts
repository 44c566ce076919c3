import { describe, expect, it } from 'vitest';
import { entriesOf } from '../../src/bench/entries/entries-of.ts';
import { demonstrationEntries } from '../../src/bench/entries/fresh.ts';
import { readInstrument } from '../../src/bench/instruments/read-instrument.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { SETUP_FIELDS, SETUP_SPECS } from '../../src/bench/read/setup-spec.ts';
import { demonstration } from '../../src/bench/state/demonstration.ts';
import { reduceBench } from '../../src/bench/state/state.ts';
import { demonstrationEntries as borrowed } from '../../src/borrow/demonstration.ts';
import { readEntries } from '../../src/borrow/read-entries.ts';
import { blankInstrument } from '../../src/instruments/blank.ts';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import { METHODS } from '../../src/sheet/method.ts';

/** What is no number for any field: words, two marks, a lone sign, more than any double. */
const BAD = ['abc', '1,2,3', '-', '1e9999', '27 parsecs', '1.2.3'] as const;
/** What is unusual and means something all the same. */
const ODD = [
  ['\uff11\uff12', '12'],
  ['1.000,5', '1000.5'],
  ["1'000.5", '1000.5'],
] as const;

interface Problem {
  readonly path: string;
  readonly problem: string;
}
/** A sentence: it begins large or with what was typed, says what is expected or allowed, and ends. */
const isSentence = (problem: string): boolean =>
  /^[\p{Lu}\u201c]/u.test(problem) && /expected|write|accepted/.test(problem) && problem.endsWith('.');
const told = (problems: readonly Problem[], path: string): readonly string[] =>
  problems.filter((each) => each.path.includes(path)).map(({ problem }) => problem);

describe.each(METHODS)('bad input in a sheet by %s', (method) => {
  const club = entriesOf(clubMeasurement(method));
  const point = club.points[0];
  if (point === undefined) throw new Error('point: wish one');
  const amounted = club.links.findIndex(({ amount }) => amount !== '');
  const inPoint = (change: Partial<typeof point>): SheetEntries => ({
    ...club,
    points: [{ ...point, ...change }],
  });
  const fields: readonly (readonly [string, (text: string) => SheetEntries])[] = [
    ['readings', (readings) => inPoint({ readings })],
    ['frequency', (frequency) => inPoint({ frequency })],
    ['nominal', (nominal) => inPoint({ nominal })],
    ['tolerance', (tolerance) => inPoint({ tolerance })],
    ['multiplier', (multiplier) => ({ ...club, multiplier })],
    ...SETUP_FIELDS[method]
      .flat()
      .filter((key) => Object.hasOwn(SETUP_SPECS, key))
      .map((key) => [key, (text: string) => ({ ...club, [key]: text })] as const),
    ...(['amount', 'loss'] as const).map(
      (key) =>
        [
          key,
          (text: string) => ({
            ...club,
            links: club.links.map((link, at) => (at === amounted ? { ...link, [key]: text } : link)),
          }),
        ] as const,
    ),
  ];

  it.each(fields)('is told beside its field with what was expected: %s', (key, withText) => {
    for (const text of BAD) {
      // in a column these are three readings
      if (key === 'readings' && text === '1,2,3') continue;
      const entries = withText(text);
      const problems = told(readMeasurement(entries).problems, key);
      expect(problems.length, text).toBeGreaterThan(0);
      for (const problem of problems) expect(isSentence(problem), problem).toBe(true);
    }
  });
});

describe('what was typed', () => {
  const start = demonstration();
  const id = start.entries.links[0]?.id ?? '';

  it.each([...BAD, ...ODD.map(([text]) => text), ''])('stays as it is, right or wrong: “%s”', (text) => {
    const next = reduceBench(start, {
      type: 'editLink',
      id,
      path: `link.${id}.amount`,
      change: { amount: text },
    });
    expect(next.entries.links[0]?.amount).toBe(text);
  });

  it.each(ODD)('means something where it can mean one thing only: “%s”', (text, plain) => {
    const reading = (readings: string) => {
      const entries = demonstrationEntries();
      const { measurement } = readMeasurement({
        ...entries,
        points: entries.points.map((each) => ({ ...each, readings: `${readings} uW` })),
      });
      return measurement?.points[0]?.columns.readings;
    };
    expect(reading(text)).toBeDefined();
    expect(reading(text)).toEqual(reading(plain));
  });

  it.each(BAD)('is told in an instrument’s form and in a borrowed calibration: “%s”', (text) => {
    const { problems } = readInstrument({
      ...blankInstrument('pad'),
      label: 'Pad',
      loss: text,
      amount: '0.5',
    });
    expect(told(problems, 'loss').some(isSentence)).toBe(true);
    const wrong = readEntries({ ...borrowed('oneLevel'), amount: text });
    expect(told(wrong.problems, 'amount').some(isSentence)).toBe(true);
  });
});
