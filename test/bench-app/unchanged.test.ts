import fc from 'fast-check';
import { expect, it } from 'vitest';
import { areSameProblems, isSameBut } from '../../src/bench/views/use-unchanged.ts';
import { blankSheet } from '../../src/sheet/blank-sheet.ts';
import { blankLink, type SheetEntries } from '../../src/sheet/entries.ts';

const sheet = blankSheet('padsIntoMeter');

it('a sheet is the same as long as only what is left aside differs', () => {
  const withLink: SheetEntries = { ...sheet, links: [blankLink('pad')] };
  expect(isSameBut(sheet, withLink, ['links', 'checks'])).toBe(true);
  expect(isSameBut(sheet, withLink, ['checks'])).toBe(false);
  expect(isSameBut(sheet, { ...withLink, title: 'Mine' }, ['links', 'checks'])).toBe(false);
});

it('a change of any field that is not left aside is seen', () => {
  const keys = Object.keys(sheet) as (keyof SheetEntries)[];
  fc.assert(
    fc.property(fc.constantFrom(...keys), (key) => {
      // another object or text in the place of what stood there
      const other = {
        ...sheet,
        [key]: typeof sheet[key] === 'string' ? `${sheet[key]}?` : { ...sheet[key] },
      };
      expect(isSameBut(sheet, other, [])).toBe(false);
      expect(isSameBut(sheet, other, [key])).toBe(true);
      expect(isSameBut(sheet, { ...sheet }, [])).toBe(true);
    }),
  );
});

it('problems are the same only with the same fields and the same sentences in the same order', () => {
  const [one, two] = [
    { path: 'pad.amount', label: 'Amount', problem: 'No number.' },
    { path: 'pad.loss', label: 'Loss', problem: 'No number.' },
  ];
  expect(areSameProblems([], [])).toBe(true);
  expect(areSameProblems([one, two], [{ ...one }, { ...two }])).toBe(true);
  expect(areSameProblems([one, two], [two, one])).toBe(false);
  expect(areSameProblems([one], [one, two])).toBe(false);
  expect(areSameProblems([one], [{ ...one, problem: 'Too large.' }])).toBe(false);
});
