import fc from 'fast-check';
import { DELIVERIES, KEYINGS, PERCENT_OF, POWER_KINDS, SOURCES } from '../../src/bench/read/spec.ts';
import { blankChecks, blankSheet } from '../../src/sheet/blank-sheet.ts';
import { CHECK_KEYS } from '../../src/sheet/check-keys.ts';
import {
  blankLink,
  blankPoint,
  ENTRY_FORMS,
  INSTRUMENT_PARTS,
  type LinkEntries,
  type LinkTextKey,
  type PointEntries,
  type PointTextKey,
  RULE_KINDS,
  type SheetEntries,
  type SheetTextKey,
  SPECIFICATION_FORMS,
  TABLED_BY,
} from '../../src/sheet/entries.ts';
import { METHODS, UNITS_OF } from '../../src/sheet/method.ts';
import { LINK_KINDS } from '../../src/sheet/sheet.ts';

const one = <T>(values: readonly T[]) => fc.constantFrom(...values);

/** What people type, right and wrong, and what nobody types. */
export const anyText = fc.oneof(
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
    '20.4 Vpp',
    '7\t8\n9\t10',
    '7;8',
  ),
  fc.double({ noNaN: true, min: -1e4, max: 1e4 }).map(String),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
);

const texts = <Key extends string>(keys: readonly Key[]) =>
  // Every key gets a text; fc.record forgets which keys they were.
  fc.record(Object.fromEntries(keys.map((key) => [key, anyText]))) as fc.Arbitrary<Record<Key, string>>;

/** Keys of the blank things whose value is a text, those of a few words that are chosen left out. */
const textKeys = <Key extends string>(blank: object, chosen: readonly string[]): Key[] =>
  Object.entries(blank).flatMap(([key, value]) =>
    typeof value === 'string' && !chosen.includes(key) ? [key as Key] : [],
  );

const LINK_TEXTS = textKeys<LinkTextKey>(blankLink(''), [
  'id',
  'kind',
  'form',
  'unit',
  'percentOf',
  'source',
  'direction',
  'by',
  'part',
]);
const POINT_TEXTS = textKeys<PointTextKey>(blankPoint(''), ['id', 'specification']);
const SHEET_TEXTS = textKeys<SheetTextKey>(blankSheet('inLine'), [
  'power',
  'delivery',
  'keying',
  'method',
  'shows',
  'terminated',
  'curve',
  'rule',
]);

const anyMethod = one(METHODS);
const anyUnit = one([...new Set(METHODS.flatMap((method) => [...UNITS_OF[method]]))]);
const yesNo = fc.constantFrom('yes' as const, 'no' as const);

const linkCodes = {
  kind: one(LINK_KINDS),
  form: one(ENTRY_FORMS),
  percentOf: one(PERCENT_OF),
  source: one(SOURCES),
  direction: fc.constantFrom('with' as const, 'against' as const),
  by: one(TABLED_BY),
  part: one(INSTRUMENT_PARTS),
  off: fc.boolean(),
  assumed: fc.boolean(),
};

const anyLink = fc
  .record({ texts: texts(LINK_TEXTS), unit: anyUnit, ...linkCodes })
  .map(({ texts: typed, ...codes }): LinkEntries => ({ ...blankLink(''), ...typed, ...codes }));

const anyPoint = fc
  .record({ texts: texts(POINT_TEXTS), specification: one(SPECIFICATION_FORMS) })
  .map(({ texts: typed, ...codes }): PointEntries => ({ ...blankPoint(''), ...typed, ...codes }));

/** Things with ids of their own. */
const numbered = <Of extends object>(stem: string, list: readonly Of[]): (Of & { id: string })[] =>
  list.map((item, index) => ({ ...item, id: `${stem}${index + 1}` }));

const sheetCodes = {
  method: anyMethod,
  shows: fc.constantFrom('mean' as const, 'peakEnvelope' as const),
  terminated: yesNo,
  curve: yesNo,
  power: one(POWER_KINDS),
  delivery: one(DELIVERIES),
  keying: one(KEYINGS),
  rule: one(RULE_KINDS),
};

/** Entries of every kind: most of them cannot be used. */
export const anyEntries: fc.Arbitrary<SheetEntries> = fc
  .record({
    texts: texts(SHEET_TEXTS),
    checks: texts(CHECK_KEYS),
    links: fc.array(anyLink, { maxLength: 4 }),
    points: fc.array(anyPoint, { minLength: 1, maxLength: 3 }),
    ...sheetCodes,
  })
  .map(({ texts: typed, links, points, ...codes }) => ({
    ...typed,
    ...codes,
    log: { lockedAt: '', changes: [] },
    links: numbered('link', links),
    points: numbered('point', points),
  }));

const number = (min: number, max: number, decimals = 2) =>
  fc
    .integer({ min: Math.round(min * 10 ** decimals), max: Math.round(max * 10 ** decimals) })
    .map((n) => String(n / 10 ** decimals));
const column = (min: number, max: number, decimals = 2) =>
  fc.array(number(min, max, decimals), { minLength: 1, maxLength: 6 }).map((values) => values.join('\n'));
const word = fc.constantFrom('Pad', 'Kabel, dünn', '20 dB | pad', 'a; b', 'x=1&y', '→');
const maybe = (text: fc.Arbitrary<string>) => fc.oneof(fc.constant(''), text);

type Unit = LinkEntries['unit'];
/** What an amount of 1 dB or percent would be in units of readings: small beside what is read below. */
const SCALES: Readonly<Partial<Record<Unit, number>>> = {
  voltsPeakToPeak: 0.05,
  volts: 0.02,
  dcVolts: 0.02,
  dcAmperes: 0.0005,
  kelvinRf: 0.05,
  kelvinDc: 0.05,
};

/** Full scale and step of a digit that suit what is read by each method below. */
const SCALE_AND_STEP = {
  padsIntoMeter: { fullScale: '10 mW', step: '0.01 mW', floor: '0.1 uW' },
  oscilloscope: { fullScale: '40 V', step: '0.1', floor: '10 mV' },
  peakDetector: { fullScale: '10', step: '0.01 V', floor: '1 mV' },
  inLine: { fullScale: '2 W', step: '1 mW', floor: '1 mW' },
  dcSubstitution: { fullScale: '10 V', step: '0.01', floor: '1 mV' },
} as const;

/** Forms that may bring degrees of freedom of their own, beside which a reliability has no place. */
const WITH_FREEDOM: readonly LinkEntries['form'][] = [
  'readings',
  'expanded',
  'coverage',
  'corrections',
  'standard',
];
/** Units in which a chain can add a correction; every method has dB. */
const CORRECTED: readonly Unit[] = ['dB', 'percentOfPower', 'percentOfVolts'];
/** From the lowest to the highest frequency and level that is typed below. */
const TABLES = {
  frequency: '1; -0.1; 0.1\n20; 0.3; 0.2',
  level: '-40 0,2 0,1\n0 0,1 0,1\n40 -0,2 0,3',
} as const;

const usableLink = (method: SheetEntries['method']) =>
  fc
    .record({
      ...linkCodes,
      label: word,
      loss: number(-5, 20),
      unit: one<Unit>(UNITS_OF[method]),
      amount: number(0.1, 3),
      lower: number(-3, -0.1),
      upper: number(0.1, 3),
      factor: number(1, 3),
      probability: number(60, 99),
      freedom: maybe(number(3, 50, 0)),
      count: number(4, 20, 0),
      top: number(0, 1),
      doubt: number(0, 0.1),
      rated: maybe(number(0.5, 100)),
      cause: fc.oneof(
        { weight: 5, arbitrary: fc.constant('') },
        { weight: 1, arbitrary: fc.constant('meter') },
      ),
      reliability: maybe(number(5, 60, 0)),
      sourceSwr: number(1, 3),
      loadSwr: number(1, 2),
      ofReading: number(0.1, 2),
      ofScale: maybe(number(0.1, 1)),
      digits: maybe(number(0, 3, 0)),
      floor: maybe(fc.constant(SCALE_AND_STEP[method].floor)),
      perKelvin: maybe(number(0, 0.1)),
      temperature: number(5, 35, 0),
      perYear: maybe(number(0, 0.1)),
      years: number(0, 3, 1),
    })
    .map((link): LinkEntries => {
      const scale = SCALES[link.unit] ?? 1;
      const scaled = (text: string): string => String(Number((Number(text) * scale).toFixed(7)));
      const { fullScale, step } = SCALE_AND_STEP[method];
      return {
        ...blankLink(''),
        ...link,
        fullScale,
        step,
        table: TABLES[link.by],
        unit: link.form !== 'corrections' || CORRECTED.includes(link.unit) ? link.unit : 'dB',
        amount: scaled(link.amount),
        lower: scaled(link.lower),
        upper: scaled(link.upper),
        doubt: scaled(link.doubt),
        reliability: WITH_FREEDOM.includes(link.form) ? '' : link.reliability,
      };
    });

/** Columns that every method can read, by column: about half a watt where they are of watts, volts or kelvins. */
const columnsFor = (method: SheetEntries['method']) => ({
  readings:
    method === 'padsIntoMeter'
      ? column(0, 9)
      : method === 'oscilloscope'
        ? column(10, 20)
        : method === 'peakDetector'
          ? column(5, 9)
          : method === 'inLine'
            ? column(0.4, 1)
            : column(10, 15),
  reflected: column(0, 0.1),
  riseDc: column(10, 15),
  volts: column(4, 6),
  amperes: column(0.1, 0.2, 3),
});

const usablePoint = (method: SheetEntries['method']) =>
  fc
    .record({
      label: maybe(word),
      frequency: number(1, 20),
      specification: one(SPECIFICATION_FORMS),
      nominal: number(0, 40).map((text) => `${text} dBm`),
      tolerance: number(0.1, 6),
      above: number(0.1, 6),
      below: number(0.1, 6),
      lowest: number(0, 20),
      highest: number(21, 50),
      ...columnsFor(method),
    })
    .map((point) => ({
      ...blankPoint(''),
      ...point,
      nominal: point.specification === 'between' ? '' : point.nominal,
    }));

const usableBy = (method: SheetEntries['method']): fc.Arbitrary<SheetEntries> =>
  fc
    .record({
      ...sheetCodes,
      method: fc.constant(method),
      title: word,
      plane: word,
      conditions: word,
      multiplier: number(0.1, 3),
      required: number(51, 99, 1),
      damage: maybe(number(0, 30)),
      load: number(45, 55),
      scopeBandwidth: number(50, 200),
      probeBandwidth: maybe(number(100, 300)),
      drop: number(0, 0.7),
      forwardScale: number(1, 2),
      forwardPercent: number(0, 10),
      reflectedScale: number(0.1, 1),
      reflectedPercent: number(0, 10),
      floor: maybe(number(-30, -10)),
      largest: maybe(number(3, 20)),
      largestPeak: maybe(number(5, 300)),
      largestReverse: maybe(number(5, 300)),
      by: word,
      date: word,
      instruments: word,
      remarks: word,
      links: fc.array(usableLink(method), { maxLength: 5 }),
      points: fc.array(usablePoint(method), { minLength: 1, maxLength: 3 }),
    })
    .map(({ links, points, ...entries }) => ({
      ...blankSheet(method),
      ...entries,
      // carrier power is read key down
      keying: entries.power === 'carrier' ? ('keyDown' as const) : entries.keying,
      checks: blankChecks(),
      links: numbered('link', links),
      points: numbered('point', points),
    }));

/** Entries of every form and method that can all be used; whether the method is in range is another matter. */
export const usableEntries: fc.Arbitrary<SheetEntries> = fc.oneof(...METHODS.map(usableBy));
