import { type Judgement, levelDbm } from '#compute';
import { measurementOf } from '../sheet/at-point.ts';
import { judgedBy } from '../sheet/conformity.ts';
import { linkOf } from '../sheet/link.ts';
import { NO_READINGS } from '../sheet/method.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { probabilityText } from '../text/probability-text.ts';
import { baseOf } from '../text/style.ts';
import { sidesOf, verdictWords } from '../text/words.ts';
import type { Outcome, Step, SumExample } from './example.ts';
import { formula, half, level, num, wattsOf } from './said.ts';
import { sheetOf } from './sheet-of.ts';

const SPECIFICATION = { lower: 23, upper: 25 } as const;
const EXPANDED_DB = 0.5;
const READINGS_DBM = [24.1, 22.85, 22.2, 23.1] as const;

/** What is read of the boards, and what they are held against. */
export const boards = () => ({
  readings: READINGS_DBM,
  specification: SPECIFICATION,
  expanded: EXPANDED_DB,
});

const judged = (estimate: number): Judgement =>
  judgedBy({
    estimate,
    standardUncertainty: EXPANDED_DB / 2,
    specification: SPECIFICATION,
    rule: { kind: 'guardBand', multiplier: 1 },
  });

const verdictOf = (estimate: number): string =>
  verdictWords(judged(estimate).verdict, sidesOf(SPECIFICATION)).replaceAll("'", '’');

/** A board as a chain of one link: the second, which nobody can tell, if not said. */
export const boardSheet = (board: 0 | 1 = 1): Sheet =>
  sheetOf({
    title: 'Four boards against one specification',
    conditions: 'key down, each board in turn',
    reading: levelDbm(READINGS_DBM[board]),
    specification: SPECIFICATION,
    links: [
      linkOf({
        id: 'meter',
        label: 'The measurement as a whole',
        kind: 'meter',
        statement: { form: 'expanded', expanded: EXPANDED_DB, coverageFactor: 2 },
        source: 'certificate',
      }),
    ],
  });

const distance = (estimate: number): number =>
  Math.min(estimate - SPECIFICATION.lower, SPECIFICATION.upper - estimate);

const steps = (): readonly Step[] => [
  {
    id: 'guard-band',
    title: 'The rule, agreed beforehand',
    formula: formula(
      (style) =>
        `inside from ${level(style, SPECIFICATION.lower, 1)} + ${num(style, EXPANDED_DB, 1, 'dB')} to ${level(style, SPECIFICATION.upper, 1)} − ${num(style, EXPANDED_DB, 1, 'dB')}`,
    ),
    words:
      'A guard band of one U on each side. Outside is what lies beyond a limit by more than U; between the two nobody can tell.',
  },
  ...READINGS_DBM.map(
    (estimate, index): Step => ({
      id: `board-${index + 1}`,
      title: `Board ${index + 1}`,
      formula: formula((style) => {
        const { probabilityOfConformity = 0 } = judged(estimate);
        const z = num(style, distance(estimate) / (EXPANDED_DB / 2), 2, 'none');
        return `${level(style, estimate)}: ${num(style, distance(estimate), 2, 'dB')} from the nearer limit, ${z} times u; inside with ${probabilityText(style, probabilityOfConformity)}`;
      }),
      words: `Verdict: ${verdictOf(estimate)}.`,
    }),
  ),
];

const outcomes = (): readonly Outcome[] =>
  READINGS_DBM.map((estimate, index) => ({
    name: `Board ${index + 1}`,
    value: (style) =>
      `${level(style, estimate)} ${half(style, EXPANDED_DB, 1, 'dB')}: ${baseOf(style) === 'ascii' ? verdictOf(estimate).replaceAll('’', "'") : verdictOf(estimate)} (${probabilityText(style, judged(estimate).probabilityOfConformity ?? 0)} inside)`,
  }));

/** Scenario: four readings against one specification. Invented data. */
export const fourReadingsOneLimit: SumExample = {
  kind: 'sum',
  slug: 'four-readings-one-limit',
  title: 'Four readings, one specification',
  summary:
    'Specified 24\u00a0dBm ±1\u00a0dB, measured four times with U 0.5\u00a0dB: one is inside, one outside, and two nobody can tell.',
  question:
    'Our module is specified 24\u00a0dBm ±1\u00a0dB. We measured four boards, each with U 0.5\u00a0dB (k\u00a0=\u00a02). Which of them pass?',
  wanted: 'whether the carrier power of each board lies within its specification',
  method:
    'A specification, a result that is a bell about its estimate, and a rule that was agreed before anybody read. The limits are in decibels, and so is the result.',
  space: 'decibels',
  known: () => [
    {
      what: 'Specification',
      value: (style) =>
        `${level(style, SPECIFICATION.lower, 0)} to ${level(style, SPECIFICATION.upper, 0)} (${wattsOf(style, SPECIFICATION.lower, 3)} to ${wattsOf(style, SPECIFICATION.upper, 3)})`,
    },
    { what: 'U of each reading, k = 2', value: (style) => num(style, EXPANDED_DB, 1, 'dB') },
    {
      what: 'Readings',
      value: (style) => READINGS_DBM.map((dbm) => level(style, dbm)).join(', '),
    },
  ],
  outcomes,
  steps,
  dominates: () =>
    'The distance to the nearer limit decides, counted in uncertainties: within one U of it no verdict is safe.',
  help: () =>
    `A smaller U moves both that cannot be told: at ${level('shown', READINGS_DBM[1])} a U of ${num('shown', -distance(READINGS_DBM[1]), 2, 'dB')} would be enough to say outside, at ${level('shown', READINGS_DBM[3])} one of ${num('shown', distance(READINGS_DBM[3]), 2, 'dB')} to say inside.`,
  mistake: () =>
    `Taking a reading on the right side of the limit for a pass. Simple acceptance would pass ${level('shown', READINGS_DBM[3])}, and be wrong with a chance of ${probabilityText('shown', 1 - (judged(READINGS_DBM[3]).probabilityOfConformity ?? 0))}. It is a rule too, if both sides agreed to it beforehand; it is none afterwards.`,
  assumptions: [
    'The result is a bell about its estimate, and nothing was known of the boards before.',
    'The rule is a guard band of one U, agreed before the readings.',
  ],
  cautions: [
    'A limit of a licence is a limit on the true power: stay below it by U instead of arguing about U.',
    'Key off before the next board is connected, and never key one without its load.',
  ],
  lesson: 'measuring/inside-outside-cant-tell',
  bench: () => {
    const one = measurementOf(boardSheet());
    return {
      ...one,
      points: READINGS_DBM.map((dbm, index) => ({
        id: `point${index + 1}`,
        label: `Board ${index + 1}`,
        specification: SPECIFICATION,
        columns: { ...NO_READINGS, readings: [dbm] },
      })),
    };
  },
};
