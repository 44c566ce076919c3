import { describe, expect, it } from 'vitest';
import { demonstrationEntries } from '../../src/bench/entries/fresh.ts';
import { budgetRows } from '../../src/bench/export/budget-table.ts';
import { pictureWords } from '../../src/bench/export/picture-words.ts';
import { recordAsText } from '../../src/bench/export/plain-text.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { budgetLines } from '../../src/bench/words/budget.ts';
import { summarise } from '../../src/bench/words/result-words.ts';
import { csvText } from '../../src/exchange/csv.ts';
import { standalonePicture } from '../../src/exchange/picture.ts';
import { light } from '../../src/styles/tokens.ts';
import { TEXT_FORMS } from '../../src/text/summary/forms.ts';
import { typedEntries } from './typed-sheet.ts';

const TITLE = '\u05de\u05e9\u05d3\u05e8 7';
const PAD = '\u0645\u062e\u0641\u0641 20';
const apart = (name: string): string => `\u2068${name}\u2069`;

/** The demonstration with names that run from right to left. */
function named() {
  const club = demonstrationEntries();
  const entries = {
    ...club,
    title: TITLE,
    remarks: PAD,
    links: club.links.map((link) => (link.kind === 'pad' ? { ...link, label: PAD, cause: TITLE } : link)),
  };
  const { measurement } = readMeasurement(entries);
  const [point] = measurement?.points ?? [];
  if (measurement === undefined || point === undefined) throw new Error('named: wish a usable sheet');
  const shown = pointResult(measurement, point.id);
  if (!shown.inRange) throw new Error('named: wish a result');
  return { entries, measurement, shown };
}
/** Every place of a name has its isolates. */
const keptApart = (text: string, name: string): void => {
  expect(text).toContain(apart(name));
  expect(text.split(name).length).toBe(text.split(apart(name)).length);
};

describe('names from right to left beside numbers', () => {
  const { entries, measurement, shown } = named();

  it.each(TEXT_FORMS.filter((form) => form !== 'ascii'))('are kept apart in a text as %s', (form) => {
    const text = recordAsText({ entries, measurement, version: '1.2.3' }, form);
    keptApart(text, TITLE);
    keptApart(text, PAD);
  });

  it('have no sign of that in ASCII', () => {
    expect(recordAsText({ entries, measurement, version: '1.2.3' })).toMatch(/^[\n -~]*$/);
  });

  it('are kept apart in the budget, in what is announced and in a picture', () => {
    expect(budgetLines('shown', shown.result).map(({ label }) => label)).toContain(apart(PAD));
    expect(summarise(shown)).not.toMatch(new RegExp(`(?<!\u2068)${PAD}`));
    const words = pictureWords(measurement, shown, { version: '1.2.3' });
    expect(words.title).toBe(apart(TITLE));
    expect(words.below.at(-1)).toContain('1.2.3');
    const { svg } = standalonePicture(words, { markup: '', width: 600, height: 100 }, light);
    keptApart(svg, TITLE);
  });

  it('are bare in the cells of a table, where nothing stands beside them', () => {
    const table = csvText(budgetRows(measurement, [shown]), 'point');
    expect(table).toContain(PAD);
    expect(table).not.toMatch(/[\u2066-\u2069]/);
  });

  it('are kept apart where something is wrong with what they name', () => {
    const frequency = '145 MHz';
    const points = [{ readings: '7' }, { readings: '7', label: PAD, frequency }];
    const table = { form: 'corrections', table: '1; 0.1; 0.06\n30; 0.1; 0.06', label: TITLE } as const;
    const beyond = readMeasurement(
      typedEntries({ points: points.map((point) => ({ frequency: '7', ...point })), links: [table] }),
    ).problems[0];
    keptApart(beyond?.label ?? '', TITLE);
    keptApart(beyond?.problem ?? '', PAD);
    const nothing = readMeasurement(
      typedEntries({ points, links: [{ label: TITLE, form: 'terms', floor: '7 mW' }] }),
    ).problems[0];
    keptApart(nothing?.label ?? '', TITLE);
  });

  it('go back into the fields as they were typed', () => {
    expect(measurement.title).toBe(TITLE);
    expect(measurement.links.some(({ label }) => label === PAD)).toBe(true);
  });
});
