import { gainDb, levelDbm, meanAsPowers, meanOfDecibels } from '#compute';
import { type Line, levelAtEnd } from '../sheet/line.ts';
import type { Outcome, Step, SumExample } from './example.ts';
import { measuredBy } from './measured-by.ts';
import { formula, given, level, num, wattsOf } from './said.ts';

const READING_DBM = -20.3;
const PAD_DB = 30;
const FREQUENCY_MHZ = 50;
const LOGGED_DBM = [10, 10, 13] as const;

const socket = (): number => READING_DBM + PAD_DB;
const logged = () => LOGGED_DBM.map(levelDbm);

/** The line from the source to the instrument, which must end in what was read. */
export const forgottenLine = (): Line => ({
  levelDbm: socket(),
  amplifierDb: 0,
  firstDb: PAD_DB,
  coaxDb: 0,
  secondDb: 0,
  end: 'instrument',
  antennaDb: gainDb(0),
  over: 'isotropic',
});

const steps = (): readonly Step[] => [
  {
    id: 'add-back',
    title: 'Add the pad back',
    formula: formula(
      (style) =>
        `${level(style, levelAtEnd(forgottenLine()), 1)} + ${num(style, PAD_DB, 0, 'dB')} = ${level(style, socket(), 2)} = ${wattsOf(style, socket(), 3)}`,
    ),
    words: 'A level plus decibels is a level; it is the pad’s loss that is added, not a second level.',
  },
  {
    id: 'forgotten',
    title: 'Without it',
    formula: formula((style) => `${level(style, READING_DBM, 1)} = ${wattsOf(style, READING_DBM, 2)}`),
    words: '30 dB are a factor of a thousand.',
  },
  {
    id: 'mean-of-decibels',
    title: 'Three sessions, averaged in decibels',
    formula: formula(
      (style) =>
        `(${LOGGED_DBM.map((dbm) => num(style, dbm, 0, 'none')).join(' + ')}) / ${LOGGED_DBM.length} = ${level(style, meanOfDecibels(logged()), 1)}`,
    ),
    words: 'Right where an instrument scatters in decibels.',
  },
  {
    id: 'mean-of-powers',
    title: 'Averaged as powers',
    formula: formula(
      (style) =>
        `(${LOGGED_DBM.map((dbm) => wattsOf(style, dbm, 2)).join(' + ')}) / ${LOGGED_DBM.length} = ${wattsOf(style, meanAsPowers(logged()), 3)} = ${level(style, meanAsPowers(logged()), 2)}`,
    ),
    words:
      'Right where the power itself varies. Here neither is: one session is 3 dB off, and nobody averages a slip.',
  },
];

const outcomes = (): readonly Outcome[] => [
  {
    name: 'At the source’s socket',
    value: (style) => `${level(style, socket(), 2)}, ${wattsOf(style, socket(), 3)}`,
  },
  {
    name: 'With the pad forgotten',
    value: (style) => `${wattsOf(style, READING_DBM, 2)}: a thousand times too little`,
  },
  {
    name: 'Mean of three sessions',
    value: (style) =>
      `${level(style, meanOfDecibels(logged()), 1)} in decibels, ${level(style, meanAsPowers(logged()), 2)} as powers`,
  },
];

/** Scenario: a pad left out of the log, and a mean of levels. Invented data. */
export const thirtyDecibelsForgotten: SumExample = {
  kind: 'sum',
  slug: 'thirty-decibels-forgotten',
  title: 'Thirty decibels in the log book',
  summary:
    'The log says 9.3\u00a0µW for a source of 10\u00a0mW, and three sessions that do not agree. What went wrong?',
  question:
    'Our 50\u00a0MHz signal source should give 10\u00a0mW. Behind a 30\u00a0dB pad the analyser shows −20.3\u00a0dBm, and the log book says 9.3\u00a0µW. In three sessions it was 10, 10 and 13\u00a0dBm. Is it broken, and what is its mean?',
  wanted: 'the carrier power into 50\u00a0Ω at the source’s socket',
  method: 'Levels and a loss: decibels add. No limits are given, so nothing is said of how sure it is.',
  space: 'none',
  known: () => [
    { what: 'Reading behind the pad', value: given(READING_DBM, 1, 'dBm') },
    { what: 'Pad', value: given(PAD_DB, 0, 'dB') },
    {
      what: 'Three sessions in the log',
      value: (style) => LOGGED_DBM.map((dbm) => level(style, dbm, 0)).join(', '),
    },
  ],
  outcomes,
  steps,
  dominates: () => 'The pad decides: a factor of a thousand, beside which no tolerance here counts.',
  help: () =>
    'Write the pads into the log beside the reading, and look for why one session is 3\u00a0dB off before you average it: a factor of two in watts is more often a slip than a drift.',
  mistake: () =>
    `Adding levels: ${level('shown', READING_DBM, 1)} “plus 30\u00a0dBm” is no sum that means anything. And a negative level is not a negative power: ${level('shown', READING_DBM, 1)} are ${wattsOf('shown', READING_DBM, 2)}.`,
  assumptions: [
    'The pad is taken as exact; half a decibel in it would be half a decibel in the answer.',
    'All three sessions meant the same power at the same socket.',
  ],
  cautions: [
    'An analyser’s input stands little: work out the level with the pad and without it before you connect.',
  ],
  lesson: 'decibels/levels-and-gains',
  bench: () =>
    measuredBy({
      title: 'A signal source behind a pad',
      measurand: {
        power: 'carrier',
        plane: 'at the source’s socket, into 50 Ω',
        conditions: `${FREQUENCY_MHZ} MHz`,
      },
      setup: { method: 'padsIntoMeter', shows: 'mean' },
      frequencyHz: FREQUENCY_MHZ * 1e6,
      specification: { lower: 9, upper: 11 },
      columns: { readings: [READING_DBM] },
      links: [
        {
          id: 'pad',
          label: `${PAD_DB} dB pad`,
          kind: 'pad',
          lossDb: PAD_DB,
          stated: { form: 'limits', shape: 'rectangular', halfWidth: 0 },
          unit: 'dB',
          percentOf: 'reading',
          source: 'judged',
        },
      ],
    }),
  benchSays:
    'The pad stands on the bench as exact, as it is taken here: put in what your pad’s data sheet says, and the analyser’s own limits beside it.',
};
