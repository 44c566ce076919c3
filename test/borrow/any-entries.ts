import fc from 'fast-check';
import {
  ALONGS,
  BORROW_KINDS,
  type BorrowEntries,
  LENDER_FORMS,
  TEXT_KEYS,
} from '../../src/borrow/entries.ts';

/** What people type into number fields, and what nobody should. */
const typed = fc.oneof(
  fc.constantFrom(
    '',
    ' ',
    '0',
    '-0.5',
    '0,25',
    '1e3',
    '7.35 dBm',
    '500 mW',
    '±0.1',
    '2',
    'nan',
    '50 Ω',
    '9'.repeat(80),
  ),
  fc.double({ min: -100, max: 100, noNaN: true }).map((value) => value.toFixed(2)),
  fc.string({ maxLength: 12 }),
);
const readings = fc.oneof(
  fc.constantFrom('', '7.35\n8.10\n7.36', '1;2;3\n4;5', 'level\t1\t2', '3.58 7 8 7\n7.1 6 7 6', '1\n2'),
  fc
    .array(fc.double({ min: -30, max: 30, noNaN: true }), { minLength: 1, maxLength: 11 })
    .map((values) => values.map((value) => value.toFixed(2)).join('\n')),
  fc.string({ maxLength: 30 }),
);

const texts = fc
  .tuple(...TEXT_KEYS.map(() => typed))
  .map((values) => Object.fromEntries(TEXT_KEYS.map((key, index) => [key, values[index] ?? ''])));

/** Any state of the form: what can be typed, whether it can be used or not. */
export const anyEntries: fc.Arbitrary<BorrowEntries> = fc
  .record({
    texts,
    kind: fc.constantFrom(...BORROW_KINDS),
    along: fc.constantFrom(...ALONGS),
    stated: fc.constantFrom(...LENDER_FORMS),
    oneMeter: fc.constantFrom('yes' as const, 'no' as const),
    places: fc.array(fc.record({ at: typed, readings }), { minLength: 1, maxLength: 5 }),
  })
  .map(({ texts: of, places, ...rest }) => ({
    // every key has its text, which Object.fromEntries forgets
    ...(of as Record<(typeof TEXT_KEYS)[number], string>),
    ...rest,
    places: places.map((place, index) => ({ ...place, id: `place${index + 1}` })),
  }));
