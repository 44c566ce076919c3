import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { specFaults } from '../../src/address/spec-faults.ts';
import { borrowAddressSpec, borrowFragment, readBorrowFragment } from '../../src/borrow/address.ts';
import { DEMONSTRATIONS, demonstrationEntries } from '../../src/borrow/demonstration.ts';
import type { BorrowEntries } from '../../src/borrow/entries.ts';
import { cleanText } from '../../src/text/clean.ts';
import { anyEntries } from './any-entries.ts';

/** Ids are places and not carried. */
const renumbered = (entries: BorrowEntries): BorrowEntries => ({
  ...entries,
  places: entries.places.map((place, index) => ({ ...place, id: `place${index + 1}` })),
});

describe('the page’s address', () => {
  test('has a specification without faults', () => {
    expect(specFaults(borrowAddressSpec())).toEqual([]);
  });

  test('carries nothing of what the page opens with', () => {
    expect(borrowFragment(demonstrationEntries('oneLevel'))).toBe('');
  });

  test.each(DEMONSTRATIONS.filter((name) => name !== 'oneLevel'))('carries %s and opens it again', (name) => {
    const entries = demonstrationEntries(name);
    const fragment = borrowFragment(entries) ?? '';
    expect(fragment).toMatch(/^[\w.&=-]+$/);
    expect(readBorrowFragment(fragment)).toEqual({ entries: renumbered(entries), problems: [] });
  });

  test('carries whatever is typed, so long as it is clean', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const clean = (text: string): string => text.split('\n').map(cleanText).join('\n');
        const texts = Object.fromEntries(
          Object.entries(entries).map(([key, value]) => [
            key,
            typeof value === 'string' ? cleanText(value) : value,
          ]),
        );
        const tidy = {
          ...entries,
          ...texts,
          without: clean(entries.without),
          with: clean(entries.with),
          places: entries.places.map(({ at, readings, ...rest }) => ({
            ...rest,
            at: cleanText(at),
            readings: clean(readings),
          })),
        };
        expect(readBorrowFragment(borrowFragment(tidy) ?? '').entries).toEqual(renumbered(tidy));
      }),
    );
  });

  test('a place on the page is no calibration, and neither is rubbish', () => {
    expect(readBorrowFragment('main')).toEqual({ entries: undefined, problems: [] });
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), (fragment) => {
        const { entries } = readBorrowFragment(fragment);
        if (entries) expect(entries.places.length).toBeGreaterThan(0);
      }),
    );
  });

  test('what is too long for an address is not cut', () => {
    const readings = '7.34 8.10 7.36\n'.repeat(1300);
    const places = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((number) => ({
      id: `place${number}`,
      at: String(number),
      readings,
    }));
    expect(borrowFragment({ ...demonstrationEntries('line'), places })).toBeUndefined();
  });
});
