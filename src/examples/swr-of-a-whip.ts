import {
  dbToAmplitudeRatio,
  gainDb,
  netPower,
  powerRatioToDb,
  powerToLevel,
  powerW,
  reflectionOfPowers,
  returnLossOfReflection,
} from '#compute';
import { type InLineUse, swrFound } from '../sheet/in-line-meter.ts';
import type { Line } from '../sheet/what-comes-back.ts';
import type { Outcome, Step, SumExample } from './example.ts';
import { measuredBy } from './measured-by.ts';
import { formula, given, num } from './said.ts';
import { stated } from './sheet-of.ts';

const FORWARD_W = 5;
const FULL_SCALE_W = 20;
const REFLECTED_W = 0.2;
const DIRECTIVITY_DB = 25;

/** The meter with needles that are taken as exact: only what leaks into the reflected side is in doubt. */
const whipUse = (): InLineUse => ({
  forwardW: FORWARD_W,
  reflectedW: REFLECTED_W,
  fullScaleW: FULL_SCALE_W,
  percentOfFullScale: 0,
  directivityDb: DIRECTIVITY_DB,
  wanted: 'net',
});

/** The same as a line without loss that ends in the whip right behind the meter; its level to the step of the figure. */
export const whipLine = (): Line => ({
  levelDbm: stated(powerToLevel(powerW(FORWARD_W)), 0),
  antennaSwr: stated(swr().swr, 2),
  lossDb: 0,
  match: 'none',
  directivityDb: DIRECTIVITY_DB,
});

function swr() {
  const found = swrFound(whipUse());
  if (!found.found) throw new RangeError('swrOfAWhip: an SWR must be there, got none');
  return found;
}

const exactScale = () => ({ fullScale: powerW(FULL_SCALE_W), percentOfFullScale: 0 });

const reflection = (): number =>
  reflectionOfPowers({ forward: powerW(FORWARD_W), reflected: powerW(REFLECTED_W) });
const net = () => netPower({ forward: powerW(FORWARD_W), reflected: powerW(REFLECTED_W) });
const leak = (): number => dbToAmplitudeRatio(gainDb(-DIRECTIVITY_DB));

const steps = (): readonly Step[] => [
  {
    id: 'net',
    title: 'What stays in the whip',
    formula: formula(
      (style) =>
        `Pf − Pr = ${num(style, FORWARD_W, 1, 'W')} − ${num(style, REFLECTED_W, 2, 'W')} = ${num(style, net(), 1, 'W')}, ${num(style, powerRatioToDb(net() / FORWARD_W), 2, 'dB')}`,
    ),
  },
  {
    id: 'reflection',
    title: 'How much of the wave comes back',
    formula: formula(
      (style) =>
        `Γ = √(Pr / Pf) = √(${num(style, REFLECTED_W, 2, 'W')} / ${num(style, FORWARD_W, 1, 'W')}) = ${num(style, reflection(), 2, 'none')}; return loss ${num(style, returnLossOfReflection(reflection()), 2, 'dB')}`,
    ),
  },
  {
    id: 'swr',
    title: 'As a standing-wave ratio',
    formula: formula((style) => `(1 + Γ) / (1 − Γ) = ${num(style, swr().swr, 2, 'none')}`),
  },
  {
    id: 'directivity',
    title: 'What leaks from forward to reflected',
    formula: formula(
      (style) =>
        `a directivity of ${num(style, DIRECTIVITY_DB, 0, 'dB')} lets ${num(style, leak(), 3, 'none')} of the forward wave through: Γ from ${num(style, reflection() - leak(), 3, 'none')} to ${num(style, reflection() + leak(), 3, 'none')}, SWR from ${num(style, swr().lower, 2, 'none')} to ${num(style, swr().upper, 2, 'none')}`,
    ),
    words: 'It adds to the reflected wave or takes from it, in a phase that nobody knows.',
  },
];

const outcomes = (): readonly Outcome[] => [
  {
    name: 'Power that stays in the whip',
    space: 'watts',
    value: (style) =>
      `${num(style, net(), 1, 'W')}, ${num(style, powerRatioToDb(net() / FORWARD_W), 2, 'dB')}`,
  },
  {
    name: 'Standing-wave ratio',
    space: 'reflections',
    value: (style) =>
      `${num(style, swr().swr, 2, 'none')}, and truly from ${num(style, swr().lower, 2, 'none')} to ${num(style, swr().upper, 2, 'none')}`,
  },
];

/** Scenario: SWR of a portable whip. Invented data. */
export const swrOfAWhip: SumExample = {
  kind: 'sum',
  slug: 'swr-of-a-whip',
  title: 'The SWR of a whip',
  summary: 'Five watts forward, a fifth of a watt back: how much is lost, and how sure is the SWR?',
  question:
    'At the foot of my portable whip the meter shows 5.0\u00a0W forward and 0.20\u00a0W reflected. What do I lose, and is my SWR really 1.5?',
  wanted: 'the power that stays in the whip at the meter, and the standing-wave ratio there',
  method:
    'A directional meter in the line. Powers are subtracted; what leaks through the coupler adds to the reflection as a voltage.',
  space: 'each',
  known: () => [
    { what: 'Forward', value: given(FORWARD_W, 1, 'W') },
    { what: 'Reflected', value: given(REFLECTED_W, 2, 'W') },
    { what: 'Directivity of the coupler, data sheet', value: given(DIRECTIVITY_DB, 0, 'dB') },
  ],
  outcomes,
  steps,
  dominates: () =>
    'The directivity alone decides how sure the SWR is, while the needles are taken as exact. For the power in the whip it hardly matters.',
  help: () =>
    'A coupler with more directivity: each 20 dB make the leak ten times smaller. Or measure the antenna with a bridge that was checked on a known load.',
  mistake: () =>
    `Taking the reflected ${num('shown', REFLECTED_W, 2, 'W')} for the loss. A standing-wave ratio of ${num('shown', swr().swr, 1, 'none')} sends back ${num('shown', 100 * reflection() ** 2, 0, 'percent')} of the power, ${num('shown', -powerRatioToDb(net() / FORWARD_W), 2, 'dB')}; “half of it” is wrong by far. And what comes back is not simply lost: how much of it goes out again is a matter of the transmitter and its tuner.`,
  assumptions: [
    'The meter was made for the line’s own impedance.',
    'The needles are taken as exact, to show what the directivity does alone; on a scale of 20 W they are not.',
  ],
  cautions: [
    'Do not touch an antenna while it is keyed: burns by radio frequency go deep, at small power too.',
    'Whether people may stand near it is a question of your country’s rules, which this site does not answer.',
  ],
  lesson: 'measuring/in-line-meter',
  bench: () =>
    measuredBy({
      title: 'The power that stays in a whip',
      measurand: {
        power: 'carrier',
        delivery: 'net',
        plane: 'at the meter, at the foot of the whip',
        conditions: 'key down',
      },
      setup: { method: 'inLine', shows: 'mean', forward: exactScale(), reflected: exactScale() },
      specification: { lower: 35.5, upper: 38.5 },
      columns: { readings: [FORWARD_W], reflected: [REFLECTED_W] },
    }),
  benchSays:
    'The bench has the power that stays in the whip, its needles taken as exact as they are here. How sure an SWR is it does not say: for that change the numbers in the figure above.',
};
