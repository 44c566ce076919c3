import fc from 'fast-check';
import { PERCENT_OF, POWER_KINDS, SOURCES, UNITS } from '../../src/bench/spec.ts';
import {
  blankLink,
  ENTRY_FORMS,
  type LinkEntries,
  RULE_KINDS,
  type SheetEntries,
  SPECIFICATION_FORMS,
} from '../../src/sheet/entries.ts';
import { LINK_KINDS } from '../../src/sheet/sheet.ts';

const one = <T>(values: readonly T[]) => fc.constantFrom(...values);

/** What people type, right and wrong, and what nobody types. */
const anyText = fc.oneof(
  fc.constantFrom(
    '',
    ' ',
    '0',
    '1,5',
    '1.5 dB',
    '200 mW',
    '23dBm',
    '-3',
    '−3',
    '±0.5',
    '1e999',
    'NaN',
    '∞',
    '1,234',
    'abc',
    '3 %',
  ),
  fc.double({ noNaN: true, min: -1e4, max: 1e4 }).map(String),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
);

const texts = <Key extends string>(keys: readonly Key[]) =>
  // Every key gets a text; fc.record forgets which keys they were.
  fc.record(Object.fromEntries(keys.map((key) => [key, anyText]))) as fc.Arbitrary<Record<Key, string>>;

const anyLink = fc
  .record({
    texts: texts([
      'label',
      'loss',
      'amount',
      'lower',
      'upper',
      'factor',
      'probability',
      'freedom',
      'count',
      'top',
      'doubt',
      'rated',
      'cause',
    ]),
    kind: one(LINK_KINDS),
    form: one(ENTRY_FORMS),
    unit: one(UNITS),
    percentOf: one(PERCENT_OF),
    source: one(SOURCES),
  })
  .map(({ texts: typed, ...codes }): LinkEntries => ({ ...blankLink(''), ...typed, ...codes }));

/** Links with ids of their own. */
const numbered = (links: readonly LinkEntries[]) =>
  links.map((link, index) => ({ ...link, id: `link${index + 1}` }));

/** Entries of every kind: most of them cannot be used. */
export const anyEntries: fc.Arbitrary<SheetEntries> = fc
  .record({
    texts: texts([
      'title',
      'plane',
      'conditions',
      'nominal',
      'tolerance',
      'lowest',
      'highest',
      'multiplier',
      'required',
      'readings',
      'scatter',
      'repeats',
      'damage',
    ]),
    power: one(POWER_KINDS),
    specification: one(SPECIFICATION_FORMS),
    rule: one(RULE_KINDS),
    links: fc.array(anyLink, { maxLength: 4 }),
  })
  .map(({ texts: typed, links, ...codes }) => ({ ...typed, ...codes, links: numbered(links) }));

const number = (min: number, max: number, decimals = 2) =>
  fc.integer({ min: min * 10 ** decimals, max: max * 10 ** decimals }).map((n) => String(n / 10 ** decimals));
const word = fc.constantFrom('Pad', 'Kabel, dünn', '20 dB | pad', 'a; b', 'x=1&y', '→');

const usableLink = fc
  .record({
    label: word,
    kind: one(LINK_KINDS),
    loss: number(-5, 20),
    form: one(ENTRY_FORMS),
    amount: number(0.1, 3),
    lower: number(-3, -0.1),
    upper: number(0.1, 3),
    factor: number(1, 3),
    probability: number(60, 99),
    freedom: fc.oneof(fc.constant(''), number(3, 50, 0)),
    count: number(4, 20, 0),
    top: number(0, 1),
    doubt: number(0, 0.1),
    unit: one(UNITS),
    percentOf: one(PERCENT_OF),
    source: one(SOURCES),
    rated: fc.oneof(fc.constant(''), number(0.5, 100)),
  })
  .map((link): LinkEntries => ({ ...blankLink(''), ...link }));

/** Entries of every form that can all be used. */
export const usableEntries: fc.Arbitrary<SheetEntries> = fc
  .record({
    title: word,
    power: one(POWER_KINDS),
    plane: word,
    conditions: word,
    specification: one(SPECIFICATION_FORMS),
    nominal: number(0, 40).map((text) => `${text} dBm`),
    tolerance: number(0.1, 6),
    lowest: number(0, 20),
    highest: number(21, 50),
    rule: one(RULE_KINDS),
    multiplier: number(0.1, 3),
    required: number(51, 99, 1),
    readings: fc.array(number(0, 9), { minLength: 1, maxLength: 6 }).map((values) => values.join('\n')),
    scatter: fc.constant(''),
    repeats: fc.constant(''),
    damage: fc.oneof(fc.constant(''), number(0, 30)),
    links: fc.array(usableLink, { maxLength: 5 }),
  })
  .map((entries) => ({ ...entries, links: numbered(entries.links) }));
