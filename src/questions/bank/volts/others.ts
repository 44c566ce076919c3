import { inOrder, other, slip } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { digits } from '../write.ts';

const HEIGHTS = [
  {
    id: 'pp',
    label: 'A',
    turns: 1.5,
    from: -1,
    to: 1,
    words: 'A, from the deepest trough to the highest crest',
  },
  { id: 'peak', label: 'B', turns: 0.25, from: 0, to: 1, words: 'B, from the middle line to the crest' },
  {
    id: 'rms',
    label: 'C',
    turns: 0.62,
    from: 0,
    to: Math.SQRT1_2,
    words: 'C, from the middle line to seven tenths of the crest’s height',
  },
  {
    id: 'half',
    label: 'D',
    turns: 0.95,
    from: 0,
    to: 0.5,
    words: 'D, from the middle line to half of the crest’s height',
  },
] as const;

/** What each height is asked by, and what to say to the others. */
const ASKED = [
  { id: 'pp', what: 'which height is the voltage from peak to peak' },
  { id: 'peak', what: 'which height has to be squared and divided by 2R for the power' },
  { id: 'rms', what: 'which height is the RMS voltage' },
] as const;

const WRONG = {
  pp: slip('vpp-as-vp', 'That is the whole height from trough to crest.'),
  peak: slip('vp-as-rms', 'That is the peak, from the middle line to the crest.'),
  rms: slip('rms-as-vp', 'That is the peak divided by √2, which is the RMS voltage.'),
  half: slip(
    'half-only',
    'Half of the peak is none of the usual voltages: RMS lies higher, at seven tenths.',
  ),
} as const;

/** Volts and watts to put in order or to point at. */
export const VOLT_OTHERS: readonly BankQuestion[] = [
  other('volts', 'place', {
    id: 'point-at-height',
    lesson: 'decibels/volts-and-watts',
    syllabus: ['1.6', '8.2'],
    difficulty: 1,
    given: { asked: oneOf(0, 1, 2) },
    make: ({ asked }) => {
      const { id: answer, what } = ASKED[asked] ?? ASKED[0];
      const right = {
        pp: 'From the deepest to the highest.',
        peak: 'The peak: from the middle to the crest.',
        rms: 'Seven tenths of the peak.',
      }[answer];
      return {
        stem: `A sine on the screen: ${what}?`,
        payload: {
          kind: 'place',
          figure: {
            figure: 'wave',
            name: 'A sine with four heights marked',
            heights: HEIGHTS.map(({ words, ...height }) => height),
          },
          places: HEIGHTS.map(({ id, words }) => ({
            id,
            words,
            ...(id === answer ? { reply: right, misconception: undefined } : WRONG[id]),
          })),
          answer,
        },
        worked: [
          'Trough to crest is peak to peak; half of it is the peak, V²/(2R); the peak divided by √2 is RMS, V²/R.',
        ],
        right,
      };
    },
  }),
  other('volts', 'order', {
    id: 'order-of-volts',
    lesson: 'decibels/volts-and-watts',
    syllabus: ['1.6'],
    difficulty: 2,
    given: { rms: steps(3, 6, 0.5), up: oneOf(1.2, 1.25), down: oneOf(0.8, 0.85) },
    make: ({ rms, up, down }) => {
      // The first and last are far from the middle one, so that only the kind of volts can mislead.
      const height = Number((rms * down * Math.sqrt(8)).toPrecision(3));
      const crest = Number((rms * up * Math.SQRT2).toPrecision(3));
      const rows = [
        { id: 'pp', text: digits('Vpp', 3)(height) },
        { id: 'rms', text: digits('Vrms', 3)(rms) },
        { id: 'peak', text: digits('Vp', 3)(crest) },
        { id: 'more', text: digits('Vrms', 3)(rms * up * up) },
      ];
      return {
        stem: 'Four sines across the same load. Put them in the order of the power that they bring.',
        payload: inOrder({
          ends: ['least power first', 'most power last'],
          items: rows,
          reversed: 'That begins with the most power.',
          otherwise: slip(
            'vpp-as-rms',
            'Bring all of them to RMS before you compare: peak to peak divided by 2√2, peak divided by √2.',
          ),
        }),
        worked: [
          `In RMS: ${rows[0]?.text}/(2√2) = ${digits('Vrms', 3)(height / Math.sqrt(8))}, ${rows[1]?.text} as it is, ${rows[2]?.text}/√2 = ${digits('Vrms', 3)(crest / Math.SQRT2)}, ${rows[3]?.text} as it is.`,
        ],
        right: 'Compared by their RMS, whatever the numbers look like.',
      };
    },
  }),
];
