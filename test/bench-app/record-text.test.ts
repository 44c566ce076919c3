import { describe, expect, it } from 'vitest';
import { levelDbm, ohms, powerW } from '#compute';
import { resultAsText, type SheetRecord, sheetSummary } from '../../src/bench/export/plain-text.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { measurementOf } from '../../src/sheet/at-point.ts';
import { blankSheet } from '../../src/sheet/blank-sheet.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import type { Measurement, Point, StatedLink } from '../../src/sheet/measurement.ts';
import { SITE_NAME } from '../../src/text/site-name.ts';
import { asMarkdown } from '../../src/text/summary/format.ts';

const LINK = 'https://example.org/bench/#v=2';
const club = (): Measurement => measurementOf(clubSheet());
const [point0] = club().points;
const point = (change: Partial<Point>): Point => {
  if (point0 === undefined) throw new Error('point: the club must have a point');
  return { ...point0, ...change };
};
const readings = (values: readonly number[]) => ({
  columns: { readings: values, reflected: [], riseDc: [], volts: [], amperes: [] },
});
const link = (id: string, change: Partial<StatedLink>): StatedLink => ({
  id,
  label: id,
  kind: 'other',
  lossDb: 0,
  stated: { form: 'limits', shape: 'rectangular', halfWidth: 0.5 },
  unit: 'dB',
  percentOf: 'reading',
  source: 'specification',
  ...change,
});

const record = (
  measurement: Measurement,
  entries: Partial<SheetEntries> = {},
  checks?: readonly string[],
): SheetRecord => ({
  measurement,
  entries: { ...blankSheet('padsIntoMeter'), ...entries },
  results: measurement.points.map(({ id }) => pointResult(measurement, id)),
  version: '1.2.3',
  checks,
  link: LINK,
});
/** The text with its broken lines joined again. */
const textOf = (...of: Parameters<typeof record>): string =>
  resultAsText(record(...of)).replace(/\n {2}/g, ' ');

describe('the record of a sheet with one point', () => {
  const text = textOf(club());

  it('has all that another person needs to check it', () => {
    for (const part of [
      '27.10 dBm +/-0.69 dB',
      'k = 2, 95.45 %',
      '513 mW, 438 to 601',
      'Reading 7 dBm',
      'By pads and cable into a power meter',
      '20 dB pad 20 dB, +/-0.5 dB, limits (data sheet)',
      'guard band',
      'Without 20 dB pad',
      'Biggest part: 20 dB pad, 70 % of the variance',
      'GUM 7.2.6',
    ])
      expect(text).toContain(part);
  });

  it('says what worked it out, in which version', () => {
    expect(text).toContain(`Worked out with ${SITE_NAME} 1.2.3, bench`);
  });

  it('ends with the address that opens the same sheet, or without any', () => {
    expect(text.split('\n').at(-1)).toBe(`<${LINK}>`);
    expect(resultAsText({ ...record(club()), link: undefined })).not.toContain('<');
  });

  it('carries the record, what was agreed and what the checks say', () => {
    const told = textOf(
      club(),
      {
        by: 'the youngest',
        instruments: 'pad 3\nthe meter that was lent',
        log: {
          lockedAt: '2026-05-02T10:00:00Z',
          changes: [
            { at: '2026-05-02T11:00:00Z', what: 'rule', from: 'guard band 1', to: 'simple', reason: '' },
            { at: '2026-05-02T12:00:00Z', what: 'point1', from: '27', to: '28', reason: 'a slip' },
          ],
        },
      },
      ['One more known pad: passed.'],
    );
    expect(told).toContain('Measured by: the youngest');
    expect(told).toContain('Instruments: pad 3; the meter that was lent');
    expect(told).toMatch(
      /Changed 2026-05-02, 11:00 UTC: rule: from "guard band 1" to "simple"; no reason given/,
    );
    expect(told).toMatch(/from "27" to "28"; reason: a slip/);
    expect(told).toContain('Check: One more known pad: passed');
  });

  it('says which links were assumed, which left out, and which share a cause', () => {
    const told = textOf({
      ...club(),
      links: [
        link('fresh', { assumed: true }),
        link('old coax', { off: true }),
        link('tied', { cause: 'one meter', sensitivity: -1 }),
        link('unsure', { reliability: 0.25, source: 'judged' }),
      ],
    });
    expect(told).toContain('fresh +/-0.5 dB, limits (assumed, no data sheet)');
    expect(told).toContain('Left out for a what-if: old coax');
    expect(told).toContain('cause shared: one meter, against the others');
    expect(told).toContain('(judged, itself known to 25 %)');
    expect(told).not.toMatch(/old coax \+/);
  });

  it('states limits as they were stated: a sum of terms, two standing-wave ratios', () => {
    const told = textOf({
      ...club(),
      links: [
        link('sheet', {
          unit: 'percentOfPower',
          stated: {
            form: 'terms',
            terms: [
              { of: 'reading', percent: 1 },
              { of: 'fullScale', percent: 0.5, fullScale: 0.02 },
              { of: 'digits', count: 2, step: 0.0001 },
              {
                of: 'kelvin',
                terms: [{ of: 'reading', percent: 0.1 }],
                temperature: 30,
                range: { lower: 18, upper: 28 },
              },
              { of: 'year', terms: [{ of: 'reading', percent: 0.2 }], years: 2 },
            ],
          },
        }),
        link('match', { stated: { form: 'swr', sourceSwr: 1.5, loadSwr: 1.2 } }),
      ],
    });
    expect(told).toContain(
      '1 % of reading + 0.5 % of 0.02 full scale + 2 steps of 0.0001 + (0.1 % of reading) per kelvin outside 18 to 28 deg C, at 30 deg C + (0.2 % of reading) per year, 2 years on',
    );
    expect(told).toContain('match SWR 1.5 on 1.2, phase unknown');
  });

  it('breaks no word at a line end', () => {
    const lines = resultAsText(
      record({ ...club(), points: [point(readings([7, 7.1, 7.05, 6.95, 7.6]))] }),
    ).split('\n');
    // A line that follows begins with two spaces and no third; one that is followed ends without a space.
    for (const line of lines) expect(line).not.toMatch(/^ {3}| $/);
    expect(lines.join('\n').replace(/\n {2}/g, ' ')).toContain(
      'Nothing is removed: leave it out only for a reason',
    );
  });
});

describe('the record of a sheet with several points', () => {
  const measurement: Measurement = {
    ...club(),
    setup: { method: 'padsIntoMeter', shows: 'mean', largest: levelDbm(10) },
    points: [
      point({ label: '3.58 MHz' }),
      point({ id: 'point2', label: '', frequencyHz: 7.03e6, ...readings([6.9, 7, 7.1]) }),
      point({ id: 'point3', label: 'too loud', ...readings([12]) }),
    ],
  };

  it('tells each by its name, the one out of range with the reason in place of numbers', () => {
    const lines = textOf(measurement).split('\n');
    expect(lines[0]).toMatch(/3 points$/);
    expect(lines.some((line) => line.startsWith('3.58 MHz: 27.10 dBm +/-0.69 dB'))).toBe(true);
    expect(lines.some((line) => line.startsWith('7.03 MHz: 27.10 dBm'))).toBe(true);
    const loud = lines.find((line) => line.startsWith('too loud: '));
    expect(loud).toBe("too loud: Out of range: 12.0 dBm is above the meter's largest level, 10.0 dBm");
    expect(lines).toContain('Reading 12 dBm');
  });

  it('reckons its cautions at the point with the largest power, and names it', () => {
    const strong = {
      ...measurement,
      points: [
        point({ label: 'low', specification: { upper: 20 } }),
        point({ id: 'p2', label: 'high', specification: { upper: 33 } }),
      ],
    };
    expect(textOf(strong)).toContain('Cautions reckoned at high');
  });
});

describe('many readings', () => {
  it('are listed up to a hundred and summed up beyond, so that ten thousand take a line', () => {
    const many = (count: number) => Array.from({ length: count }, (_, index) => 7 + (index % 21) / 100);
    const told = textOf({ ...club(), points: [point(readings(many(10_000)))] });
    expect(told).toMatch(/Reading: 10000 readings from 7 dBm to 7\.2 dBm, mean 7\.10/);
    expect(told.length).toBeLessThan(4000);
    expect(textOf({ ...club(), points: [point(readings(many(100)))] })).toContain('7.00, 7.01, 7.02');
  });
});

it('is the same in Markdown, with the reader’s words disarmed', () => {
  const sly = { ...club(), title: '[click](https://example.org) *me*' };
  const markdown = asMarkdown(sheetSummary(record(sly)));
  expect(markdown).toContain('\\[click\\]\\(https\\: \\/\\/example');
  expect(markdown.split('\n')[0]).toMatch(/^\*\*.*\*\*$/);
});

it('warns in the words of its method: an oscilloscope minds volts', () => {
  const scope: Measurement = {
    ...club(),
    setup: {
      method: 'oscilloscope',
      resistance: ohms(50),
      bandwidthsHz: [1e8],
      terminated: true,
    },
    links: [link('pad', { kind: 'pad', lossDb: 20, ratedPowerW: powerW(1) })],
    points: [point({ frequencyHz: 3.58e6, ...readings([1.4]) })],
  };
  const told = textOf(scope);
  expect(told).toContain('By oscilloscope across a load of 50 ohm; bandwidth 100 MHz; terminated');
  expect(told).toMatch(/Without pad, at the input: 8\.4 V peak; no largest is stated/);
});
