import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clubSheet } from '../../src/sheet/club.ts';
import { gaugeModel } from '../../src/sheet/end-gauge.ts';
import { budgetModel, clubUse, printedGauge, SUBJECTS, written } from '../../src/sheet/stated-budget.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { isUnitName } from '../../src/text/units.ts';
import { budgetSpec } from '../../src/widgets/budget/spec.ts';
import { strings } from '../../src/widgets/budget/strings.ts';
import { OUTPUT, ownTexts, partLabel } from '../../src/widgets/budget/units.ts';

const nb = '\u00a0';
/** A number back from its text, with a true minus sign. */
const numberOf = (text: string): number => Number.parseFloat(text.replace('\u2212', '-'));
const rows = { club: written(clubUse()).budget, gauge: written(printedGauge()).budget };

describe('the units of a budget', () => {
  it('are names that text knows, one for each subject', () => {
    expect(Object.keys(OUTPUT)).toEqual([...SUBJECTS]);
    for (const { unit } of Object.values(OUTPUT)) expect(isUnitName(unit)).toBe(true);
    expect(kindOf(budgetSpec.fields.scatter.kind).base).toBe(OUTPUT.club.unit);
  });

  it.each(SUBJECTS)('of %s make the contribution: u times c, in whatever unit u is given', (subject) => {
    for (const row of rows[subject]) {
      const { u, sensitivity } = ownTexts('shown', subject, row);
      const product = Math.abs(numberOf(u) * numberOf(sensitivity));
      const { decimals } = OUTPUT[subject];
      // Two rounded numbers, each to a percent or to half a unit of its last place.
      expect(Math.abs(product - row.contribution), row.id).toBeLessThanOrEqual(
        0.02 * row.contribution + 10 ** -decimals,
      );
    }
  });

  it('of the gauge are kelvin and parts per million per kelvin where an input is no length', () => {
    const own = (id: string): string => {
      const row = rows.gauge.find((one) => one.id === id);
      if (row === undefined) throw new Error(`wish a row ${id}`);
      return ownTexts('shown', 'gauge', row).u;
    };
    expect(own('mean')).toBe(`0.200${nb}K`);
    expect(own('cycle')).toBe(`0.354${nb}K`);
    expect(own('expansion')).toBe(`1.15${nb}ppm/K`);
    expect(own('standard')).toBe(`25.0${nb}nm`);
  });

  it('of the club are decibels throughout, and every c is 1', () => {
    for (const row of rows.club) {
      const { u, sensitivity } = ownTexts('shown', 'club', row);
      expect(u).toMatch(/^\d\.\d{3}\u00a0dB$/);
      expect(sensitivity).toBe('1');
    }
  });

  it('are spoken as words', () => {
    const [row] = rows.gauge;
    if (row === undefined) throw new Error('wish a row');
    expect(ownTexts('spoken', 'gauge', row).u).toBe('25.0 nanometres');
  });
});

describe('the names of parts', () => {
  it('are those of the club’s links, and of the table of the gauge', () => {
    for (const { id, label } of clubSheet().links) expect(partLabel(id)).toBe(label);
    for (const { id } of gaugeModel().inputs) expect(partLabel(id)).toBe(strings.parts[id]);
    expect(partLabel('readings')).toBe(strings.parts.readings);
  });

  it('are there for every input of either budget, in words and not by id', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SUBJECTS), fc.integer({ min: 2, max: 20 }), (subject, count) => {
        for (const { id } of budgetModel({ ...clubUse(), subject, count }).inputs)
          expect(partLabel(id)).toMatch(/^[A-Z0-9].* |^[A-Z][a-z]+$/);
      }),
    );
  });

  it('leave a part that nobody has named as it is', () => expect(partLabel('nobody')).toBe('nobody'));
});
