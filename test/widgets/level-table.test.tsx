import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { fixedTables } from '../../src/tables/index.ts';
import LevelTable from '../../src/widgets/level-table/LevelTable.tsx';
import { levelTableSpec } from '../../src/widgets/level-table/spec.ts';
import { TableGrid } from '../../src/widgets/level-table/TableGrid.tsx';
import { resistanceText, summarise } from '../../src/widgets/level-table/words.ts';

const prepared = defaultState(levelTableSpec.fields);

describe('the table of levels', () => {
  it('says across which resistance it holds, with as many digits as were given', () => {
    expect(resistanceText('shown', prepared)).toBe('50\u00a0Ω');
    expect(resistanceText('ascii', { resistance: 49.8 })).toBe('49.8 ohm');
  });

  /** Common practice, no source: 30 dBm are 7.07 V across 50 ohms, and 8.66 V across 75. */
  it('speaks of the volts of one watt when the resistance changes', () => {
    expect(summarise(prepared)).toBe('Across 50 ohms, 30 decibel-milliwatts are 7.07 volts RMS.');
    expect(summarise({ resistance: 75 })).toBe('Across 75 ohms, 30 decibel-milliwatts are 8.66 volts RMS.');
  });

  it('is complete as the server writes it: caption, heads, and every row with its name', () => {
    const html = render(<LevelTable />);
    expect(html).toContain('<caption>Levels, powers, and the volts of a sine across 50\u00a0Ω</caption>');
    expect(html).toContain('<th scope="col">Peak to peak</th>');
    expect(html.match(/<th scope="row">/g)?.length).toBeGreaterThan(50);
    expect(html).toContain('Another resistance needs JavaScript');
  });
});

describe('a table to print', () => {
  it('has each column’s head with its unit, and a name that a scrolling part can be found by', () => {
    for (const table of fixedTables()) {
      const html = render(<TableGrid table={table} label={`${table.title}, a table`} />);
      expect(html).toContain(`aria-label="${table.title.replaceAll('"', '&quot;')}, a table"`);
      for (const { what, unit } of table.columns)
        expect(html).toContain(`<th scope="col">${what}${unit === undefined ? '' : `, ${unit}`}</th>`);
      expect(html.match(/<tr>/g)).toHaveLength(table.rows.length + 1);
    }
  });
});
