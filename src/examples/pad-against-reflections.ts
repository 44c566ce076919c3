import {
  dbToPowerRatio,
  gainDb,
  levelDbm,
  type MismatchMagnitudes,
  mismatchLimits,
  reflectionOfSwr,
  type TwoPort,
} from '#compute';
import { measurementOf } from '../sheet/at-point.ts';
import { bandChainOf } from '../sheet/chain.ts';
import { linkOf, uShaped } from '../sheet/link.ts';
import type { Link, Sheet } from '../sheet/sheet.ts';
import { signsOf } from '../text/style.ts';
import { chainSteps } from './chain-steps.ts';
import type { ChainExample, Outcome, Step } from './example.ts';
import { formula, given, num, sides } from './said.ts';
import { sheetOf, stated } from './sheet-of.ts';

const SOURCE_SWR = 2;
const METER_SWR = 1.25;
const PAD_DB = 6;
const PAD_SWR = 1.15;
const READING_DBM = 10.1;

const source = (): number => reflectionOfSwr(SOURCE_SWR);
const meter = (): number => reflectionOfSwr(METER_SWR);
const end = (): number => reflectionOfSwr(PAD_SWR);

const pad = (reflection: number): TwoPort => ({
  input: reflection,
  output: reflection,
  gain: gainDb(-PAD_DB),
});
const direct = (): MismatchMagnitudes => ({ source: source(), load: meter() });

/** Half of the width of the limits, to two decimals: a U shape has its ends there. */
function halfOf(magnitudes: MismatchMagnitudes): number {
  const { lower, upper } = mismatchLimits(magnitudes);
  return stated((upper - lower) / 2, 2);
}

const mismatchLink = (id: string, label: string, halfWidth: number): Link =>
  linkOf({ id, label, kind: 'mismatch', statement: uShaped(halfWidth), source: 'judged' });

function at(links: readonly Link[]): Sheet {
  return sheetOf({
    title: 'A source that reflects, on a meter that does too',
    plane: 'into an ideal load of 50 Ω',
    conditions: '145 MHz, steady carrier',
    reading: levelDbm(READING_DBM),
    specification: { lower: 9.5, upper: 10.5 },
    links,
  });
}

const without = (): Sheet => at([mismatchLink('direct', 'Source on the meter', halfOf(direct()))]);

/** With a pad between: its input on the source, its output on the meter, and what still goes through it twice. */
const withPad = (): Sheet =>
  at([
    mismatchLink('input', 'Source on the pad', halfOf({ source: source(), load: end() })),
    mismatchLink('output', 'Pad on the meter', halfOf({ source: end(), load: meter() })),
    mismatchLink(
      'through',
      'Source on the meter, through the pad',
      halfOf({ source: source() * dbToPowerRatio(gainDb(-PAD_DB)), load: meter() }),
    ),
  ]);

const steps = (): readonly Step[] => [
  {
    id: 'reflections',
    title: 'From ratios to reflections',
    formula: formula(
      (style) =>
        `Γ = (s − 1) / (s + 1): source ${num(style, source(), 3, 'none')}, meter ${num(style, meter(), 3, 'none')}, pad ${num(style, end(), 3, 'none')}`,
    ),
  },
  {
    id: 'limits',
    title: 'Straight on the meter',
    formula: formula((style) =>
      `20 lg(1 ± ${num(style, source(), 3, 'none')} × ${num(style, meter(), 3, 'none')}) dB: ${sides(style, mismatchLimits(direct()))}`.replace(
        '±',
        signsOf(style).plusMinus.trim(),
      ),
    ),
    words:
      'The phase between the two is unknown, so the correction is anywhere between, and likeliest near the ends.',
  },
  {
    id: 'perfect-pad',
    title: 'Through a pad that reflects nothing itself',
    formula: formula((style) => sides(style, mismatchLimits({ ...direct(), between: pad(0) }))),
    words: 'The wave passes the pad twice more, so 6 dB weaken the echo to a quarter.',
  },
  {
    id: 'real-pad',
    title: 'Through a real one',
    formula: formula((style) => sides(style, mismatchLimits({ ...direct(), between: pad(end()) }))),
    words: 'Its own ends reflect as well: at worst it is no better than without, but all three rarely agree.',
  },
  ...chainSteps(without()),
];

const also = (): readonly Outcome[] => [
  {
    name: 'With the pad, at worst',
    value: (style) => sides(style, mismatchLimits({ ...direct(), between: pad(end()) })),
  },
  {
    name: 'Standard uncertainty without and with it',
    value: (style) => {
      const of = (sheet: Sheet): string =>
        num(style, bandChainOf(sheet).result.propagation.standardUncertainty, 2, 'dB');
      return `${of(without())} and ${of(withPad())}`;
    },
  },
];

/** Scenario: a pad between a reflecting source and a meter. Invented data. */
export const padAgainstReflections: ChainExample = {
  kind: 'chain',
  slug: 'pad-against-reflections',
  title: 'A pad against reflections',
  summary:
    'A source of SWR 2 on a meter of SWR 1.25: what do reflections do to the reading, and does a 6 dB pad cure it?',
  question:
    'My signal source has SWR 2 at its socket, the meter 1.25. Somebody said: put a 6\u00a0dB pad between and forget it. How large is the error, and what does the pad really buy?',
  wanted: 'the power that the source would give into an ideal load of 50\u00a0Ω',
  method:
    'Limits of mismatch from the magnitudes of the reflections, their phase unknown. As factors of the volts they multiply, so in decibels they add.',
  space: 'decibels',
  known: () => [
    { what: 'Reading', value: given(READING_DBM, 1, 'dBm') },
    { what: 'SWR of the source', value: given(SOURCE_SWR, 1, 'none') },
    { what: 'SWR of the meter', value: given(METER_SWR, 2, 'none') },
    {
      what: 'Pad',
      value: (style) => `${num(style, PAD_DB, 0, 'dB')}, SWR ${num(style, PAD_SWR, 2, 'none')} at both ends`,
    },
  ],
  sheet: without,
  steps,
  also,
  better: {
    sheet: withPad,
    words:
      'With the 6 dB pad between, and its loss added back; what its attenuation is off by comes on top, and 6 dB of level are gone.',
  },
  mistake: () =>
    `Reckoning with a perfect pad: ${sides('shown', mismatchLimits({ ...direct(), between: pad(0) }))} is what remains of the direct path alone. With its own SWR of ${num('shown', PAD_SWR, 2, 'none')} it is ${sides('shown', mismatchLimits({ ...direct(), between: pad(end()) }))} at worst. And a transmitter’s SWR is a guess: it is no linear source of 50\u00a0Ω.`,
  assumptions: [
    'Magnitudes of the reflections are known, their phases are not.',
    'The power meant is that into an ideal load. For the power that goes into the pad’s input the source’s reflection drops out.',
    'The pad is symmetrical, and its attenuation is taken as exact here.',
  ],
  cautions: [
    'The pad has to stand the whole power: three quarters of it stay in 6 dB as heat.',
    'Key off before it goes in or out.',
  ],
  lesson: 'measuring/pads-into-a-meter',
  bench: () => measurementOf(without()),
};
