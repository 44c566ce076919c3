import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeEntries, encodeEntries } from '../../src/bench/address/address.ts';
import { type Comparison, comparisonOf as compareBy } from '../../src/compare/compared.ts';
import { demonstrationCompare, demonstrationSheets, SPREAD } from '../../src/compare/demonstration.ts';
import { blankCompare, type CompareEntries } from '../../src/compare/entries.ts';
import { needsDecoder, readRow as readRowBy } from '../../src/compare/read-row.ts';
import { turned } from '../../src/compare/shared.ts';
import {
  answersOf,
  chartPoints,
  missing,
  nameOf,
  notesOf,
  pairLines,
  summarise,
} from '../../src/compare/words.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import { type Typing, typedEntries } from '../bench-app/typed-sheet.ts';

const comparisonOf = (entries: CompareEntries) => compareBy(entries, decodeEntries);
const readRow = (row: CompareEntries['rows'][number]) => readRowBy(row, decodeEntries);
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const rowsOf = (sheets: readonly SheetEntries[]): CompareEntries['rows'] =>
  sheets.map((sheet, index) => ({ id: `sheet${index + 1}`, address: encodeEntries(sheet) ?? '', point: '' }));
/** Sheets of one meter each: reading and half-width of the named links, in dB. */
const compared = (
  sheets: readonly Typing[],
  marks: Partial<Pick<CompareEntries, 'same' | 'apart'>> = {},
): Comparison => comparisonOf({ rows: rowsOf(sheets.map(typedEntries)), same: [], apart: [], ...marks });
const sheet = (readings: string, links: Typing['links'] = [{ label: 'Meter', amount: '0.5' }]): Typing => ({
  points: [{ readings }],
  links,
});
const pair = (comparison: Comparison) => comparison.pairs[0]?.compared;
const rss = (...halves: number[]): number => Math.hypot(...halves) / Math.sqrt(3);

describe('the club’s two measurements', () => {
  const club = comparisonOf(demonstrationCompare());

  test('agree, and what they share is counted whole in the mean', () => {
    expect(club.rows.map(({ problem }) => problem)).toEqual([undefined, undefined]);
    expect(pair(club)?.compatible).toBe(true);
    // the spread of +-0.15 dB, and nothing else
    expect(pair(club)?.shared).toBeCloseTo(rss(0.15), 6);
    expect(club.candidates).toEqual([{ kind: 'link', name: SPREAD, shared: true, sheets: 2 }]);
    expect(club.differing).toEqual([]);
  });

  test('say so in words, and the mean in watts', () => {
    const answers = answersOf(club).map(({ figure, words }) => plain(`${figure} | ${words}`));
    expect(answers[0]).toBe('+0.52 dB | “Pads and meter” less “Oscilloscope”');
    expect(answers[1]).toMatch(/^They agree \| normalised error 0\.66: .* ±0\.79 dB/);
    expect(answers[2]).toMatch(/^26\.70 dBm ±0\.37 dB \| 429 to 510 mW/);
    expect(notesOf(club).map(plain)).toEqual([
      'They share 0.087 dB (standard uncertainty): the mean can never be better than that.',
      expect.stringMatching(/^Weights in the mean: “Pads and meter” 2\d %, “Oscilloscope” 7\d %\.$/),
    ]);
    expect(summarise(club)).not.toMatch(/[−±]/);
  });

  test('are drawn with what they say together', () => {
    const points = chartPoints(club);
    expect(points.map(({ label }) => label)).toEqual(['Pads and meter', 'Oscilloscope', 'Together']);
    expect(points[0]?.specification).toEqual({ lower: 25.5, upper: 28.5 });
    expect(points[2]?.band?.estimate).toBeCloseTo(club.mean?.value ?? 0, 12);
  });
});

describe('two sheets', () => {
  test('that are independent differ with both uncertainties', () => {
    const both = compared([sheet('27 dBm'), sheet('26.5 dBm', [{ label: 'Detector', amount: '0.3' }])]);
    expect(pair(both)?.difference).toBeCloseTo(0.5, 9);
    expect(pair(both)?.standardUncertainty).toBeCloseTo(rss(0.5, 0.3), 9);
    expect(both.candidates).toEqual([]);
    expect(notesOf(both)[0]).toContain('taken as independent');
  });

  test('with a link of one name share it only where the reader says so', () => {
    const links = (own: string): Typing['links'] => [
      { label: 'Same pad', amount: '0.5' },
      { label: own, amount: '0.2' },
    ];
    const sheets = [sheet('27 dBm', links('Meter')), sheet('26.4 dBm', links('Detector'))];
    const apart = compared(sheets);
    expect(apart.candidates).toEqual([{ kind: 'link', name: 'Same pad', shared: false, sheets: 2 }]);
    expect(pair(apart)?.standardUncertainty).toBeCloseTo(rss(0.5, 0.2, 0.5, 0.2), 9);
    expect(pair(apart)?.compatible).toBe(true);
    const marked = compared(sheets, { same: ['Same pad'] });
    expect(pair(marked)?.standardUncertainty).toBeCloseTo(rss(0.2, 0.2), 9);
    expect(pair(marked)?.compatible).toBe(false);
    expect(answersOf(marked).at(-1)?.figure).toBe('No common value');
    expect(chartPoints(marked)).toHaveLength(2);
  });

  test('that share all they may be wrong by, and differ, are told that something is missing', () => {
    const meter: Typing['links'] = [{ label: 'Meter', amount: '0.5' }];
    const all = { same: ['Meter'] };
    const alike = compared([sheet('27 dBm', meter), sheet('27 dBm', meter)], all);
    expect(answersOf(alike)[1]).toEqual({
      figure: 'They agree',
      words: 'nothing that is not shared makes them differ',
    });
    expect(pairLines(alike)[0]).toMatchObject({ ratio: '0.00', verdict: 'They agree' });
    const apart = compared([sheet('27 dBm', meter), sheet('26.9 dBm', meter)], all);
    expect(answersOf(apart)[1]).toEqual({
      figure: 'They do not agree',
      words: expect.stringMatching(/^they differ, and all that they may be wrong by is marked as shared/),
    });
    expect(pairLines(apart)[0]).toMatchObject({ ratio: 'infinite', verdict: 'They do not agree' });
  });

  test('that say the same by another way are not called different for what the arithmetic leaves', () => {
    const meter = { label: 'Meter', amount: '0.5' };
    const pad = { label: 'Pad', kind: 'pad', loss: '19.4', amount: '0' } as const;
    // 7.7 and 19.4 are 27.1, and a hair less in a computer
    const alike = compared([sheet('27.1 dBm', [meter]), sheet('7.7 dBm', [meter, pad])], { same: ['Meter'] });
    expect(pair(alike)).toMatchObject({ difference: 0, compatible: true });
    expect(answersOf(alike)[1]?.words).toBe('nothing that is not shared makes them differ');
  });

  test('that name one cause share it, unless the reader says otherwise', () => {
    const cause = (label: string): Typing['links'] => [{ label, amount: '0.5', cause: 'laboratory' }];
    const sheets = [sheet('27 dBm', cause('Meter')), sheet('27 dBm', cause('Another'))];
    const shared = compared(sheets);
    expect(shared.candidates).toEqual([{ kind: 'cause', name: 'laboratory', shared: true, sheets: 2 }]);
    expect(pair(shared)?.standardUncertainty).toBeCloseTo(0, 9);
    const apart = compared(sheets, { apart: ['laboratory'] });
    expect(pair(apart)?.standardUncertainty).toBeCloseTo(rss(0.5, 0.5), 9);
  });

  test('a cause that two links of one sheet share stays one within it', () => {
    const twice: Typing['links'] = [
      { label: 'A', amount: '0.5', cause: 'room' },
      { label: 'B', amount: '0.5', cause: 'room' },
    ];
    const apart = compared([sheet('27 dBm', twice), sheet('27 dBm', twice)], { apart: ['room'] });
    expect(pair(apart)?.standardUncertainty).toBeCloseTo(Math.SQRT2 * rss(1), 9);
  });

  test('of two frequencies or two kinds of power are told to measure different things', () => {
    const at = (frequency: string): Typing => ({
      points: [{ readings: '27 dBm', frequency }],
      links: [{ amount: '0.5' }],
    });
    expect(compared([at('3.58 MHz'), at('7.1 MHz')]).differing).toEqual(['frequency']);
    expect(compared([at('3.58 MHz'), at('3.581 MHz')]).differing).toEqual([]);
    const pep: Typing = { ...at('3.58 MHz'), sheet: { power: 'peakEnvelope' } };
    const both = compared([at('3.58 MHz'), pep]);
    expect(both.differing).toContain('power');
    expect(notesOf(both)[0]).toMatch(
      /^These sheets do not measure the same thing: They do not mean the same power/,
    );
  });
});

describe('what the sums refuse', () => {
  test('is told in their words, and nothing is compared', () => {
    const refused = { refused: 'choleskyFactor: correlations must be possible together' };
    expect(missing(refused)).toContain('cannot move together: choleskyFactor');
    expect(missing({ refused: undefined })).toBe('Two usable sheets are needed to compare.');
    expect(compared([sheet('27 dBm'), sheet('26 dBm')]).refused).toBeUndefined();
  });
});

describe('three sheets', () => {
  const three = compared([
    sheet('27 dBm'),
    sheet('26.8 dBm'),
    sheet('27.1 dBm', [{ label: 'Other', amount: '0.2' }]),
  ]);

  test('have three pairs, and a mean of all', () => {
    expect(pairLines(three)).toHaveLength(3);
    expect(three.mean?.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
    expect(answersOf(three)[0]).toEqual({
      figure: 'They agree',
      words: expect.stringMatching(/^the farthest apart are .* normalised error of 0\.\d\d$/),
    });
  });

  test('one of which is far off have no mean', () => {
    const off = compared([sheet('27 dBm'), sheet('26.8 dBm'), sheet('24 dBm')]);
    expect(off.consistent).toBe(false);
    expect(pairLines(off).map(({ verdict }) => verdict)).toEqual([
      'They agree',
      'They do not agree',
      'They do not agree',
    ]);
    expect(answersOf(off).map(({ figure }) => figure)).toEqual(['They do not agree', 'No common value']);
  });
});

describe('of three sheets', () => {
  test('the pair that has nothing left to differ by is farther apart than any other', () => {
    const meter: Typing['links'] = [{ label: 'Meter', amount: '0.5' }];
    const sheets = [sheet('27 dBm', meter), sheet('26.9 dBm', meter), sheet('27.4 dBm', [{ amount: '0.5' }])];
    const { words } = answersOf(compared(sheets, { same: ['Meter'] }))[0] ?? {};
    expect(words).toMatch(/^.* less .* differ, and all that they may be wrong by is marked as shared/);
  });
});

describe('a row', () => {
  const [club] = demonstrationSheets();
  const address = (club && encodeEntries(club)) ?? '';
  const row = (change: Partial<CompareEntries['rows'][number]>) =>
    readRow({ id: 'a', address, point: '', ...change });

  test('takes a whole address as well as what stands after #', () => {
    for (const text of [address, `#${address}`, ` https://club.example/watt/bench/#${address} `])
      expect(row({ address: text }).sheet?.measurement.title).toBe('Pads and meter');
  });

  test.each([
    ['', 'No address yet'],
    ['https://club.example/bench/', 'This is no address of a sheet'],
    ['#main', 'This is no address of a sheet'],
    ['t=A&x=1&v=2', 'This sheet cannot be used yet. '],
  ])('of %j is told', (text, problem) => {
    expect(row({ address: text })).toMatchObject({ problem: expect.stringContaining(problem) });
  });

  test('of a prepared sheet needs no decoder, any other waits for it', () => {
    expect(needsDecoder({ id: 'a', address: 'club 1', point: '' })).toBe(false);
    expect(needsDecoder({ id: 'a', address: ' ', point: '' })).toBe(false);
    expect(needsDecoder({ id: 'a', address, point: '' })).toBe(true);
    expect(readRowBy({ id: 'a', address, point: '' }, undefined).problem).toBe('The address is being read …');
    expect(row({ address: 'club 3' }).problem).toContain('This is no address of a sheet');
  });

  test('an address cut short is told as damaged', () => {
    expect(row({ address: address.slice(0, -4) }).problem).toContain('damaged');
  });

  test('a sheet of several points is compared at the chosen one', () => {
    const points = [
      { readings: '27 dBm', label: 'Low' },
      { readings: '28 dBm', label: 'High' },
    ];
    const text = encodeEntries(typedEntries({ points, links: [{ amount: '0.5' }] })) ?? '';
    expect(row({ address: text }).points).toEqual(['Low', 'High']);
    const { sheet: chosen } = row({ address: text, point: '2' });
    expect(chosen && nameOf(chosen)).toBe('A transmitter, High');
    expect(row({ address: text, point: '3' }).problem).toContain('no such point');
  });

  test('a method out of range is no result, and the others are compared', () => {
    const scope = typedEntries({
      method: 'oscilloscope',
      sheet: { load: '50', scopeBandwidth: '20 MHz', probeBandwidth: '20 MHz' },
      points: [{ readings: '14 V', frequency: '145 MHz' }],
    });
    const mixed = comparisonOf({
      rows: rowsOf([scope, typedEntries({}), typedEntries({})]),
      same: [],
      apart: [],
    });
    expect(mixed.rows[0]?.problem).toContain('The method gives no number here');
    expect(mixed.pairs).toHaveLength(1);
  });

  test('nothing that is pasted makes it throw', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const found = comparisonOf({ ...blankCompare(), rows: [{ id: 'a', address: text, point: '1' }] });
        expect(found.mean).toBeUndefined();
        expect(summarise(found)).toBe('Two usable sheets are needed to compare.');
      }),
    );
  });
});

describe('marks', () => {
  test('turned twice are as before', () => {
    const marks = { same: ['a'], apart: ['b'] };
    for (const candidate of [
      { kind: 'link', name: 'a' },
      { kind: 'link', name: 'c' },
      { kind: 'cause', name: 'b' },
      { kind: 'cause', name: 'd' },
    ] as const)
      expect(turned(turned(marks, candidate), candidate)).toEqual(marks);
    expect(turned(marks, { kind: 'cause', name: 'a' })).toEqual({ same: ['a'], apart: ['b', 'a'] });
  });
});
