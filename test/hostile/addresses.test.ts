import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import type { AddressSpec } from '../../src/address/field-spec.ts';
import { decodeEntries } from '../../src/bench/address/address.ts';
import { openingOf } from '../../src/bench/address/fragment.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { demonstration } from '../../src/bench/state/demonstration.ts';
import { reduceBench } from '../../src/bench/state/state.ts';
import { readBorrowFragment } from '../../src/borrow/address.ts';
import { outcomeOf } from '../../src/borrow/outcome.ts';
import { readEntries } from '../../src/borrow/read-entries.ts';
import { readCompareFragment } from '../../src/compare/address.ts';
import { comparisonOf } from '../../src/compare/compared.ts';
import { addresses } from '../corpus/addresses.ts';
import { type Kind, kinds } from '../corpus/kinds.ts';
import { damaged } from './any-damage.ts';
import { expectClean, expectTold } from './clean.ts';

/** Addresses tried in all; the pages that compute from theirs have a share of their own. */
const TRIED = 10_000;
const OF_PAGES = { bench: 600, borrow: 400, compare: 200 };
const names = Object.keys(kinds) as Kind[];
const each = Math.ceil((TRIED - 1200) / names.length);

const keptOf = (kind: Kind): fc.Arbitrary<string> =>
  fc
    .constantFrom(...addresses.filter((entry) => entry.kind === kind).map(({ address }) => address))
    .chain(damaged);

test.each(names)('a hurt address of %s opens an allowed state, as text alone, or is told', (kind) => {
  const spec: AddressSpec = kinds[kind];
  fc.assert(
    fc.property(keptOf(kind), (address) => {
      const { state, problems } = decode(spec, address);
      expectClean(state);
      expectTold(problems.map(({ sentence }) => sentence));
      expect(decode(spec, encode(spec, state)).state).toEqual(state);
    }),
    { numRuns: each },
  );
});

describe('what a hurt address opens is computed or told, never thrown', () => {
  test('on the bench', () => {
    fc.assert(
      fc.property(keptOf('bench'), (address) => {
        const action = openingOf(address);
        const { entries } = action ? reduceBench(demonstration(), action) : demonstration();
        const { measurement, problems } = readMeasurement(entries);
        for (const { id } of measurement?.points ?? []) pointResult(measurement as never, id);
        expectClean(entries);
        expectTold(problems.map(({ problem }) => problem));
      }),
      { numRuns: OF_PAGES.bench },
    );
  });

  test('where calibrations are borrowed', () => {
    fc.assert(
      fc.property(keptOf('borrow'), (address) => {
        const { entries, problems } = readBorrowFragment(address);
        expectTold(problems);
        if (entries === undefined) return;
        expectClean(entries);
        const { checked } = readEntries(entries);
        if (checked !== undefined) outcomeOf(checked);
      }),
      { numRuns: OF_PAGES.borrow },
    );
  });

  test('where methods are compared', () => {
    fc.assert(
      fc.property(keptOf('compare'), (address) => {
        const { entries, problems } = readCompareFragment(address);
        expectTold(problems);
        if (entries === undefined) return;
        expectClean(entries);
        comparisonOf(entries, decodeEntries);
      }),
      { numRuns: OF_PAGES.compare },
    );
  });
});
