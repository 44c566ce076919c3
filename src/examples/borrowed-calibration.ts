import { levelDbm } from '#compute';
import { withLinkAmount } from '../sheet/amount.ts';
import { measurementOf } from '../sheet/at-point.ts';
import { bandChainOf } from '../sheet/chain.ts';
import { limits, linkOf, uShaped } from '../sheet/link.ts';
import type { Link, Sheet } from '../sheet/sheet.ts';
import { chainSteps } from './chain-steps.ts';
import type { ChainExample, Outcome, Step } from './example.ts';
import { expandedBy, formula, given, half, level, num } from './said.ts';
import { sheetOf } from './sheet-of.ts';

const LENT_DBM = 7.35;
const OWN_DBM = 8.1;
const LATER_DBM = 7.9;
const LENT_U_DB = 0.2;
const SCATTER_DB = 0.06;
const ROUNDS = 5;
const RESOLUTION_DB = 0.05;
const DRIFT_DB = 0.1;
const TEMPERATURE_DB = 0.1;
const MISMATCH_DB = 0.1;

const correction = (): number => LENT_DBM - OWN_DBM;

/** What the comparison itself leaves in doubt. */
const comparison = (): readonly Link[] => [
  linkOf({
    id: 'lent',
    label: 'The meter that was lent',
    kind: 'comparison',
    statement: { form: 'expanded', expanded: LENT_U_DB, coverageFactor: 2 },
    source: 'certificate',
  }),
  linkOf({
    id: 'rounds',
    label: 'Scatter of the comparison',
    kind: 'comparison',
    statement: { form: 'readings', standardDeviation: SCATTER_DB, count: ROUNDS },
    source: 'measured',
  }),
  linkOf({
    id: 'digit',
    label: 'Last digit, comparing',
    kind: 'comparison',
    statement: limits(RESOLUTION_DB),
    source: 'specification',
  }),
  linkOf({
    id: 'warmth',
    label: 'Temperature, comparing',
    kind: 'comparison',
    statement: limits(TEMPERATURE_DB),
    source: 'judged',
  }),
  linkOf({
    id: 'swap',
    label: 'Mismatch, comparing',
    kind: 'mismatch',
    statement: uShaped(MISMATCH_DB),
    source: 'judged',
  }),
  linkOf({
    id: 'drift',
    label: 'Drift of the own meter since',
    kind: 'meter',
    statement: limits(DRIFT_DB),
    source: 'specification',
  }),
];

/** What the later reading brings once more. */
const later = (): readonly Link[] => [
  linkOf({
    id: 'own',
    label: 'Scatter of one reading',
    kind: 'meter',
    statement: { form: 'standard', standardUncertainty: SCATTER_DB, degreesOfFreedom: ROUNDS - 1 },
    source: 'measured',
  }),
  linkOf({
    id: 'step',
    label: 'Last digit, reading',
    kind: 'meter',
    statement: limits(RESOLUTION_DB),
    source: 'specification',
  }),
  linkOf({
    id: 'heat',
    label: 'Temperature, reading',
    kind: 'meter',
    statement: limits(TEMPERATURE_DB),
    source: 'judged',
  }),
  linkOf({
    id: 'mismatch',
    label: 'Mismatch, reading',
    kind: 'mismatch',
    statement: uShaped(MISMATCH_DB),
    source: 'judged',
  }),
];

const at = (reading: number, links: readonly Link[]): Sheet =>
  sheetOf({
    title: 'A reading with a borrowed correction',
    plane: 'into the meter’s input, as into 50 Ω',
    conditions: '28.2 MHz, steady carrier, the day of the comparison or soon after',
    reading: levelDbm(reading),
    specification: { lower: 6.5, upper: 7.5 },
    links,
  });

/** The later reading, corrected: the reading is entered with its correction, as the bench would add it. */
const sheet = (): Sheet => at(LATER_DBM + correction(), [...comparison(), ...later()]);
/** The correction by itself. */
export const comparedSheet = (): Sheet => at(LENT_DBM, comparison());

const steps = (): readonly Step[] => [
  {
    id: 'correction',
    title: 'The correction',
    formula: formula(
      (style) =>
        `lent − own = ${level(style, LENT_DBM)} − ${level(style, OWN_DBM)} = ${num(style, correction(), 2, 'dB')}`,
    ),
    words: 'A correction is added to a reading (VIM, 2012, 2.53).',
  },
  {
    id: 'its-own',
    title: 'How well it is known',
    formula: formula((style) => {
      const { standardUncertainty, expanded } = bandChainOf(comparedSheet()).result.propagation;
      return `u = ${num(style, standardUncertainty, 3, 'dB')}; U = ${num(style, expanded, 2, 'dB')}`;
    }),
    words:
      'Lent meter, scatter, last digit, temperature, mismatch and drift. It cannot be smaller than the lender’s own part.',
  },
  {
    id: 'later',
    title: 'A later reading, corrected',
    formula: formula(
      (style) =>
        `${level(style, LATER_DBM)} + (${num(style, correction(), 2, 'dB')}) = ${level(style, LATER_DBM + correction())}`,
    ),
    words: 'It brings its own scatter, last digit, temperature and mismatch besides.',
  },
  ...chainSteps(sheet()),
];

const also = (): readonly Outcome[] => {
  const { result } = bandChainOf(comparedSheet());
  return [
    {
      name: 'The correction',
      value: (style) => `${num(style, correction(), 2, 'dB')} ${expandedBy(style, result.propagation, 2)}`,
    },
  ];
};

/** Scenario: a calibration borrowed from a better meter. Invented data. */
export const borrowedCalibration: ChainExample = {
  kind: 'chain',
  slug: 'borrowed-calibration',
  title: 'A borrowed calibration',
  summary: 'A better meter for one evening: how good is your own afterwards, and for how long?',
  question:
    'The neighbouring club lent us a power meter with a certificate, U 0.20\u00a0dB. On the same source theirs shows 7.35\u00a0dBm and mine 8.10. Next week mine shows 7.90. What is the level, and how sure am I?',
  wanted: 'the level into the meter’s input, as into 50\u00a0Ω, from the later reading',
  method:
    'A comparison in turn: theirs, mine, theirs. The difference is the correction; everything is in decibels and adds.',
  space: 'decibels',
  known: () => [
    {
      what: 'Lent meter on the source',
      value: (style) => `${level(style, LENT_DBM)}, U ${num(style, LENT_U_DB, 2, 'dB')} (k = 2)`,
    },
    {
      what: 'Own meter on the same source',
      value: (style) => `${level(style, OWN_DBM)}, ${ROUNDS} rounds, s ${num(style, SCATTER_DB, 2, 'dB')}`,
    },
    { what: 'Later reading of the own meter', value: given(LATER_DBM, 2, 'dBm') },
    { what: 'Last digit', value: (style) => half(style, RESOLUTION_DB, 2, 'dB') },
    {
      what: 'Drift, temperature, mismatch',
      value: (style) => `${half(style, DRIFT_DB, 1, 'dB')} each`,
    },
  ],
  sheet,
  steps,
  also,
  better: {
    sheet: () => withLinkAmount(withLinkAmount(sheet(), 'warmth', 0.03), 'heat', 0.03),
    words: 'Both times the meters stood in the same room for an hour before anybody read them.',
  },
  mistake: () =>
    `Taking “calibrated” for “right”. The comparison changed nothing in the meter: it still shows ${num('shown', -correction(), 2, 'dB')} too much, and whoever forgets the correction has it in every reading. Nor does the lender’s U of ${num('shown', LENT_U_DB, 2, 'dB')} get smaller by averaging.`,
  assumptions: [
    'The source kept its level while the meters took turns; what it drifted is in the scatter.',
    'The correction holds near this level, frequency and temperature, and for the time the drift was judged for.',
    'The certificate is the lent meter’s own, and was read at this frequency.',
  ],
  cautions: [
    'Swapping meters means many reconnections: key off, make sure there is no power, then swap.',
    'Work out the level before the better instrument is connected: it is not yours to burn.',
  ],
  lesson: 'measuring/borrowing-a-calibration',
  bench: () => measurementOf(sheet()),
};
