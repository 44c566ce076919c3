import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demonstrationEntries } from '../../src/bench/entries/fresh.ts';
import { budgetRows } from '../../src/bench/export/budget-table.ts';
import { namelessEntries, namelessMeasurement } from '../../src/bench/export/nameless.ts';
import { pictureWords } from '../../src/bench/export/picture-words.ts';
import { recordAsText } from '../../src/bench/export/plain-text.ts';
import { readingRows } from '../../src/bench/export/reading-table.ts';
import { sheetsAsFile } from '../../src/bench/export/sheet-file.ts';
import { type Standing, takenOf } from '../../src/bench/export/taken.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { pointLabel } from '../../src/bench/words/point-order.ts';
import { csvText } from '../../src/exchange/csv.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import type { Measurement } from '../../src/sheet/measurement.ts';
import { usableEntries } from './any-entries.ts';

/** Stands wherever a reader may have written a name or a number of a thing. */
const SECRET = 'Quux-4711';

/** The demonstration with the secret in every place that names people or things. */
function named(): SheetEntries {
  const club = demonstrationEntries();
  return {
    ...club,
    title: `${SECRET}'s transmitter`,
    by: SECRET,
    instruments: `meter ${SECRET}\npad ${SECRET}`,
    certificates: SECRET,
    remarks: `lent by ${SECRET}`,
    links: club.links.map((link) => ({
      ...link,
      label: `${SECRET} ${link.label}`,
      cause: link.kind === 'pad' || link.kind === 'cable' ? SECRET : '',
      instrument: SECRET,
    })),
    points: club.points.map((point) => ({ ...point, label: `for ${SECRET}` })),
    log: {
      lockedAt: '2026-05-09T10:00:00.000Z',
      changes: [
        { at: '2026-05-09T10:20:00.000Z', what: 'rule', from: 'a', to: 'b', reason: `${SECRET} said so` },
        { at: '2026-05-09T10:21:00.000Z', what: 'rule', from: 'b', to: 'c', reason: '' },
      ],
    },
  };
}

function standing(entries: SheetEntries): Standing {
  const { measurement } = readMeasurement(entries);
  const [point] = measurement?.points ?? [];
  if (measurement === undefined || point === undefined) throw new Error('standing: wish a measurement');
  const shown = pointResult(measurement, point.id);
  return { entries, measurement, shown, version: '1.2.3', usable: true };
}

/** A measurement but for its notes, its points called as a reader meets them. */
const said = ({ record: _, points, ...measurement }: Measurement) => ({
  ...measurement,
  points: points.map((point, index) => ({
    ...point,
    label: pointLabel('unicode', point, index).replaceAll('\u00a0', ' '),
  })),
});

/** Every text that can go out, one after the other. */
function everything(taken: ReturnType<typeof takenOf>): string {
  const { measurement, shown, entries, linked, version } = taken;
  const file = sheetsAsFile([entries, linked], '2026-05-09T18:00:00.000Z');
  if (!file.ok || !shown.inRange) throw new Error('everything: wish a file and a point in range');
  return [
    file.text,
    recordAsText({ ...taken, link: 'https://example.org' }, 'unicode'),
    csvText(readingRows(measurement), 'point'),
    csvText(budgetRows(measurement, [shown]), 'comma'),
    JSON.stringify(pictureWords(measurement, shown, { version, address: 'example.org/bench/' })),
  ].join('\n');
}

describe('what goes out without names', () => {
  it('has none of them left, in no form, and has them all where they were not left out', () => {
    expect(everything(takenOf(standing(named()), true))).not.toContain(SECRET);
    expect(everything(takenOf(standing(named()), true))).not.toContain('4711');
    const whole = everything(takenOf(standing(named()), false));
    expect(whole.split(SECRET).length).toBeGreaterThan(20);
  });

  it('calls links by their kinds and numbers, where there are several of one', () => {
    expect(namelessEntries(named()).links.map(({ label }) => label)).toEqual([
      'Comparison 1',
      'Comparison 2',
      'Instrument',
      'Mismatch',
      'Pad',
      'Cable or connector',
    ]);
  });

  it('still shows which links share a cause, and that a reason was given', () => {
    const { links, log } = namelessEntries(named());
    expect(links.map(({ cause }) => cause)).toEqual(['', '', '', '', 'cause 1', 'cause 1']);
    expect(log.changes.map(({ reason }) => reason)).toEqual(['given, but left out here', '']);
  });

  it('keeps what names nobody: numbers, frequency, conditions, supply, temperature and date', () => {
    const before = demonstrationEntries();
    const after = namelessEntries(before);
    for (const key of [
      'plane',
      'conditions',
      'supply',
      'temperature',
      'date',
      'damage',
      'multiplier',
    ] as const)
      expect(after[key]).toBe(before[key]);
    expect(after.points[0]).toMatchObject({ frequency: '3.58 MHz', readings: '7 dBm' });
  });

  it('gives the same numbers, link by link', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        const { measurement } = readMeasurement(entries);
        if (measurement === undefined) return;
        const without = namelessMeasurement(measurement);
        const numbers = (of: typeof measurement) =>
          budgetRows(
            of,
            of.points.map(({ id }) => pointResult(of, id)),
          ).map((row) => row.filter((cell) => typeof cell === 'number'));
        expect(numbers(without)).toEqual(numbers(measurement));
      }),
      { numRuns: 40 },
    );
  });

  it('is the same whether names are taken out of what was typed or of what was read', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        const { measurement } = readMeasurement(entries);
        const { measurement: fromEntries } = readMeasurement(namelessEntries(entries));
        if (measurement === undefined || fromEntries === undefined) return;
        expect(said(fromEntries)).toEqual(said(namelessMeasurement(measurement)));
      }),
      { numRuns: 40 },
    );
  });

  it('has nothing more to leave out a second time', () => {
    const once = namelessEntries(named());
    expect(namelessEntries(once)).toEqual(once);
  });
});

describe('what goes out beside entries that cannot be used', () => {
  it('has the numbers of the last usable ones in the address, and in the file what was typed', () => {
    const good = standing(named());
    const typed = { ...named(), damage: 'a lot' };
    const taken = takenOf({ ...good, entries: typed, usable: false }, false);
    expect(taken.entries.damage).toBe('a lot');
    expect(taken.linked.damage).toBe('20 dBm');
    expect(takenOf({ ...good, entries: typed, usable: false }, true).linked.title).toBe('A transmitter');
  });
});
