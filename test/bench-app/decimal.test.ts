import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entriesOf } from '../../src/bench/entries/entries-of.ts';
import { demonstrationEntries } from '../../src/bench/entries/fresh.ts';
import { budgetRows } from '../../src/bench/export/budget-table.ts';
import { pictureWords } from '../../src/bench/export/picture-words.ts';
import { recordAsText } from '../../src/bench/export/plain-text.ts';
import { readingRows } from '../../src/bench/export/reading-table.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import type { BenchAction } from '../../src/bench/state/actions.ts';
import { benchIn, spelledState } from '../../src/bench/state/decimal.ts';
import { demonstration } from '../../src/bench/state/demonstration.ts';
import { reduceBench } from '../../src/bench/state/state.ts';
import { statedForms } from '../../src/bench/words/stated-words.ts';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import { METHODS } from '../../src/sheet/method.ts';
import { fieldTexts } from '../../src/text/field-texts.ts';
import { withoutIsolates } from '../../src/text/isolate.ts';
import { styleWith } from '../../src/text/style.ts';
import { TEXT_FORMS } from '../../src/text/summary/forms.ts';
import { usableEntries } from './any-entries.ts';
import { anyComputed, numberedOf } from './any-measurement.ts';
import { typedMeasurement } from './typed-sheet.ts';

/** A text whose decimals have no sign that could differ. */
const signless = (text: string): string =>
  text
    .replaceAll('\\', '')
    .replaceAll('\u22c5', '')
    .replaceAll(/(?<=\d)[.,](?=\d)/g, '_')
    .replaceAll(/;(?=\s)/g, ',');
/** What is measured, for comparing: the spelling of its fields is no part of it. */
const valuesOf = (entries: SheetEntries) => {
  const { measurement, problems } = readMeasurement(entries);
  if (measurement === undefined) return problems;
  const { title, setup, rule, repeatability, links, points } = measurement;
  return { title, setup, rule, repeatability, links, points };
};

describe('what is taken along with decimal commas', () => {
  it('says the same in every form of text as with points', () => {
    fc.assert(
      fc.property(anyComputed, fc.constantFrom(...TEXT_FORMS), ({ entries, measurement }, form) => {
        const [point, comma] = (['point', 'comma'] as const).map((decimal) =>
          recordAsText({ entries, measurement, version: '7', decimal }, form),
        );
        expect(signless(comma ?? '')).toBe(signless(point ?? ''));
      }),
      { numRuns: 25 },
    );
  });

  it.each(METHODS)('has no decimal point left that no reader typed: %s', (method) => {
    const club = clubMeasurement(method);
    const measurement = { ...club, measurand: { ...club.measurand, conditions: 'key down' } };
    const entries = { ...demonstrationEntries(), supply: '12 V' };
    const [first] = measurement.points;
    if (first === undefined) throw new Error('points: wish one');
    const shown = pointResult(measurement, first.id);
    const texts = [
      ...TEXT_FORMS.map((form) =>
        recordAsText({ entries, measurement, version: '7', decimal: 'comma' }, form),
      ),
      JSON.stringify(
        readingRows(measurement, 'comma').map((row) => row.filter((cell) => typeof cell === 'string')),
      ),
      JSON.stringify(
        budgetRows(measurement, [shown], 'comma').map((row) =>
          row.filter((cell) => typeof cell === 'string'),
        ),
      ),
      ...(shown.inRange
        ? [JSON.stringify(pictureWords(measurement, shown, { version: '7', decimal: 'comma' }))]
        : []),
      ...(shown.inRange
        ? statedForms(styleWith('unicode', 'comma'), shown.result).map(({ text }) => text)
        : []),
    ];
    const own = (text: string): string =>
      text.replaceAll('\\', '').replaceAll(/\s+/g, ' ').replaceAll('GUM 7.2.6', '');
    for (const text of texts) expect(own(text)).not.toMatch(/\d\.\d/);
  });

  it('calls a point that nobody named by its frequency with the sign that was asked for', () => {
    const points = [
      { readings: '27', frequency: '3.58' },
      { readings: '27', label: 'at 7.03' },
      { readings: '27' },
    ];
    const measurement = typedMeasurement({ points });
    const named = readingRows(measurement, 'comma').map(([name]) => withoutIsolates(`${name}`));
    expect(named).toEqual(['Point', '3,58 MHz', 'at 7.03', 'Point 3']);
    expect(entriesOf(measurement).points.map(({ label }) => label)).toEqual(['', 'at 7.03', '']);
  });

  it('says the same in a picture as with points', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        for (const shown of numberedOf(computed)) {
          const [point, comma] = (['point', 'comma'] as const).map((decimal) =>
            JSON.stringify(pictureWords(computed.measurement, shown, { version: '7', decimal })),
          );
          expect(signless(comma ?? '')).toBe(signless(point ?? ''));
        }
      }),
      { numRuns: 25 },
    );
  });
});

describe('fields that the site fills in with decimal commas', () => {
  it('mean the same measurement', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        expect(valuesOf(fieldTexts(entries, 'comma'))).toEqual(valuesOf(entries));
      }),
    );
  });

  const start = demonstration();
  const stateAfter = (...actions: readonly BenchAction[]) => actions.reduce(benchIn('comma'), start);

  it('are those of the demonstration, while nobody has changed it', () => {
    const { entries } = spelledState(start, 'comma');
    expect(entries.links.map(({ amount }) => amount)).toEqual(
      start.entries.links.map(({ amount }) => amount.replace('.', ',')),
    );
    expect(spelledState(start, 'point')).toBe(start);
  });

  it('stay as they are beside a field that is typed, which has what was typed', () => {
    const next = stateAfter({ type: 'edit', path: 'multiplier', change: { multiplier: '1.25' } });
    expect(next.entries.multiplier).toBe('1.25');
    expect(next.entries.links[0]?.amount).toBe(start.entries.links[0]?.amount.replace('.', ','));
    expect(spelledState(next, 'comma')).toBe(next);
  });

  it('are those that a handle moved', () => {
    const id = start.entries.links[0]?.id ?? '';
    const typed: BenchAction = {
      type: 'editLink',
      id,
      path: `link.${id}.amount`,
      change: { amount: '0.75' },
    };
    expect(stateAfter(typed).entries.links[0]?.amount).toBe('0.75');
    const pulled = stateAfter(typed, { type: 'pull', id, expandedDb: 0.333 });
    const plain = reduceBench(reduceBench(start, typed), { type: 'pull', id, expandedDb: 0.333 });
    expect(pulled.entries.links[0]?.amount).toMatch(/^\d,\d+$/);
    expect(pulled.measurement.links).toEqual(plain.measurement.links);
  });

  it('come with a sheet that is begun, and are left alone by what changes no field', () => {
    expect(
      stateAfter({ type: 'fresh', method: 'dcSubstitution' }).entries.links.some(({ amount }) =>
        /\./.test(amount),
      ),
    ).toBe(false);
    expect(stateAfter({ type: 'show', what: 'curve', on: true }).entries).toBe(start.entries);
    expect(stateAfter({ type: 'demonstration' }).entries.links[0]?.amount).toContain(',');
  });

  it('are no business of a reader who keeps to the point', () => {
    expect(benchIn('point')).toBe(reduceBench);
  });
});
