import { powerToLevel, powerW } from '#compute';
import { withLinkAmount } from '../sheet/amount.ts';
import { limits, linkOf } from '../sheet/link.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { powerIntervalText } from '../text/power-text.ts';
import { chainSteps } from './chain-steps.ts';
import type { ChainExample, Step } from './example.ts';
import { formula, given, num, watts } from './said.ts';
import { benchOf, sheetOf, stated } from './sheet-of.ts';

const READING_W = 3;
const FULL_SCALE_W = 20;
const PERCENT = 5;
const SMALLER_SCALE_W = 5;

const errorW = (fullScale: number): number => (PERCENT / 100) * fullScale;
const share = (fullScale: number): number => (100 * errorW(fullScale)) / READING_W;

const sheet = (): Sheet =>
  sheetOf({
    title: 'Low on the scale of a meter in the line',
    plane: 'towards the load, at the meter',
    conditions: '3.65 MHz, key down, into a dummy load',
    reading: powerToLevel(powerW(READING_W)),
    specification: { lower: 33.5, upper: 36.5 },
    links: [
      linkOf({
        id: 'scale',
        label: 'Scale of the meter',
        kind: 'meter',
        unit: 'percentOfPower',
        statement: limits(stated(share(FULL_SCALE_W), 2)),
        source: 'specification',
      }),
    ],
  });

const steps = (): readonly Step[] => [
  {
    id: 'full-scale',
    title: 'Percent of what?',
    formula: formula(
      (style) =>
        `${num(style, PERCENT, 0, 'percent')} of ${watts(style, FULL_SCALE_W, 2)} = ${watts(style, errorW(FULL_SCALE_W), 2)}, wherever the needle stands`,
    ),
  },
  {
    id: 'of-the-reading',
    title: 'As a share of what it shows',
    formula: formula(
      (style) =>
        `${watts(style, errorW(FULL_SCALE_W), 2)} / ${watts(style, READING_W, 2)} = ${num(style, share(FULL_SCALE_W), 0, 'percent')}: ${powerIntervalText(style, { lowerW: READING_W - errorW(FULL_SCALE_W), upperW: READING_W + errorW(FULL_SCALE_W) })}`,
    ),
    words:
      'A third of the reading is the most that this site’s method for such meters stands behind (common practice).',
  },
  ...chainSteps(sheet()),
];

/** Scenario: a directional power meter read low on its scale. Invented data. */
export const lowOnTheScale: ChainExample = {
  kind: 'chain',
  slug: 'low-on-the-scale',
  title: 'Low on the scale',
  summary: 'A meter for 20\u00a0W, good to 5\u00a0% of full scale, shows 3\u00a0W. Two watts, or four?',
  question:
    'My meter in the line goes to 20\u00a0W and is good to 5\u00a0% of full scale. Into the dummy load it shows 3\u00a0W. Five percent of 3\u00a0W is next to nothing, isn’t it?',
  wanted: 'the power that travels towards the load, key down',
  method:
    'A directional meter in the line. Its limits are in watts and the same all along the scale; what they are of the reading becomes decibels, lopsided.',
  space: 'decibels',
  known: () => [
    { what: 'Reading, forward', value: given(READING_W, 0, 'W') },
    { what: 'Full scale', value: given(FULL_SCALE_W, 0, 'W') },
    {
      what: 'Limits, data sheet',
      value: (style) => `${num(style, PERCENT, 0, 'percent')} of full scale, either way`,
    },
  ],
  sheet,
  steps,
  better: {
    sheet: () => withLinkAmount(sheet(), 'scale', stated(share(SMALLER_SCALE_W), 2)),
    words: 'The same reading on a scale of 5 W, with the same five percent of full scale.',
  },
  mistake: () =>
    `Five percent of the reading would be ${watts('shown', (PERCENT / 100) * READING_W, 2)}: the data sheet speaks of the scale, and that is ${num('shown', FULL_SCALE_W / READING_W, 1, 'none')} times as much.`,
  assumptions: [
    'The load takes all of the wave; else what comes back has to be taken off, with an error of its own.',
    'A steady carrier: such meters show the mean, unless they hold the peak.',
    'Frequency response and directivity are left out here; the bench has them.',
  ],
  cautions: [
    'Into a dummy load that stands the power; do not open the line while it is keyed.',
    'Do not switch to a smaller scale with more power on the line than it goes to.',
  ],
  lesson: 'measuring/in-line-meter',
  bench: () =>
    benchOf(
      { ...sheet(), links: [] },
      {
        setup: {
          method: 'inLine',
          shows: 'mean',
          forward: { fullScale: powerW(FULL_SCALE_W), percentOfFullScale: PERCENT },
          reflected: { fullScale: powerW(FULL_SCALE_W), percentOfFullScale: PERCENT },
        },
        delivery: 'incident',
        columns: { readings: [READING_W], reflected: [0] },
      },
    ),
};
