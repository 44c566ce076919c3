import { describe, expect, it } from 'vitest';
import { sheetsInFile } from '../../src/bench/export/sheet-file.ts';
import { FILE_MARK } from '../../src/exchange/file-form.ts';
import { blankInstrument } from '../../src/instruments/blank.ts';
import { fileExample } from '../../src/layouts/file-example.ts';
import { fileTables } from '../../src/layouts/file-fields.ts';
import { blankSheet } from '../../src/sheet/blank-sheet.ts';
import { blankLink, blankPoint } from '../../src/sheet/entries.ts';
import { fileOf } from '../exchange/demonstration.ts';

const tables = fileTables();
const namesIn = (id: string): readonly string[] =>
  tables.find((table) => table.id === id)?.rows.map(({ name }) => name) ?? [];

describe('the description of files', () => {
  it('has a table for the sheet, for each list in it, for an instrument, and for what was practised', () => {
    expect(tables.map(({ id }) => id)).toEqual([
      'sheets',
      'points',
      'links',
      'changes',
      'instruments',
      'practice',
      'answers',
    ]);
  });

  it('names every field that can be typed on a sheet, a point, a link or an instrument', () => {
    const { points: _, links: __, log: ___, checks, ...own } = blankSheet('padsIntoMeter');
    for (const key of [...Object.keys(own), ...Object.keys(checks)]) expect(namesIn('sheets')).toContain(key);
    const { id: _id, ...point } = blankPoint('');
    for (const key of Object.keys(point)) expect(namesIn('points')).toContain(key);
    const { id: __id, ...link } = blankLink('');
    for (const key of Object.keys(link)) expect(namesIn('links')).toContain(key);
    expect(namesIn('instruments').toSorted()).toEqual(
      ['id', ...Object.keys(blankInstrument('meter'))].toSorted(),
    );
  });

  it('says what each field is, what it holds, and what stands where it is left out', () => {
    for (const { name, label, holds } of tables.flatMap(({ rows }) => rows))
      expect(
        [name, label, holds].every((words) => words.length > 0),
        name,
      ).toBe(true);
    const rule = tables[0]?.rows.find(({ name }) => name === 'rule');
    expect(rule).toMatchObject({ holds: 'simple, guardBand, probability', otherwise: 'simple' });
  });

  it('shows an example that the bench opens, every field of it understood', () => {
    const bytes = new TextEncoder().encode(JSON.stringify(fileExample({ mark: FILE_MARK, version: 1 })));
    const read = sheetsInFile(bytes);
    expect(read).toMatchObject({ ok: true, notes: [] });
    const [sheet] = read.ok ? read.sheets : [];
    expect(sheet).toMatchObject({ title: 'Hidden transmitter', points: [{ readings: '7.0 dBm\n7,1 dBm' }] });
    expect(sheet?.links.map(({ loss, amount }) => [loss, amount])).toEqual([['20', '0.5']]);
  });

  it('tells only codes that a file may really have', () => {
    for (const { name, holds } of tables[0]?.rows ?? []) {
      if (!/^\w+, \w+/.test(holds) || holds.startsWith('text')) continue;
      for (const code of holds.split(', '))
        expect(sheetsInFile(fileOf({ sheets: [{ [name]: code }] }, 1)), `${name}: ${code}`).toMatchObject({
          ok: true,
        });
    }
  });
});
