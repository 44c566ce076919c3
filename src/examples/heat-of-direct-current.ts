import { ohms, powerToLevel, powerW } from '#compute';
import { withLinkAmount } from '../sheet/amount.ts';
import { limits, linkOf } from '../sheet/link.ts';
import type { LinkUnit } from '../sheet/method.ts';
import type { Link, Sheet } from '../sheet/sheet.ts';
import { chainSteps } from './chain-steps.ts';
import type { ChainExample, Step } from './example.ts';
import { formula, num, watts, within } from './said.ts';
import { benchOf, sheetOf, stated } from './sheet-of.ts';

const RF_K = 14.2;
const DC_K = 14;
const THERMOMETER_K = 0.1;
const VOLTS = 10;
const VOLTS_PERCENT = 0.5;
const AMPERES = 0.1995;
const AMPERES_PERCENT = 1;
const LEAK_PERCENT = 1;

const direct = (): number => VOLTS * AMPERES;
const power = (): number => (direct() * RF_K) / DC_K;

const part = (id: string, label: string, percent: number): Link =>
  linkOf({
    id,
    label,
    kind: id === 'leak' ? 'other' : 'meter',
    unit: 'percentOfPower',
    statement: limits(stated(percent, 2)),
    source: id === 'leak' ? 'judged' : 'specification',
  });

const sheet = (): Sheet =>
  sheetOf({
    title: 'A load heated twice',
    power: 'mean',
    conditions: 'steady carrier for ten minutes, insulated load in still air',
    reading: powerToLevel(powerW(power())),
    specification: { lower: 32, upper: 34 },
    links: [
      part('volts', 'Voltmeter', VOLTS_PERCENT),
      part('amperes', 'Ammeter', AMPERES_PERCENT),
      part('rf-rise', 'Thermometer with RF', (100 * THERMOMETER_K) / RF_K),
      part('dc-rise', 'Thermometer with DC', (100 * THERMOMETER_K) / DC_K),
      part('leak', 'Unequal loss of heat', LEAK_PERCENT),
    ],
  });

const asLimits = (halfWidth: number, unit: LinkUnit) =>
  ({ stated: { form: 'limits', shape: 'rectangular', halfWidth }, unit }) as const;

const steps = (): readonly Step[] => [
  {
    id: 'direct-current',
    title: 'Watts of direct current',
    formula: formula(
      (style) =>
        `V × I = ${num(style, VOLTS, 2, 'V')} × ${num(style, AMPERES, 4, 'A')} = ${watts(style, direct(), 4)}`,
    ),
  },
  {
    id: 'rise',
    title: 'And of radio frequency, by the rise',
    formula: formula(
      (style) =>
        `P = V I × ΔT(RF) / ΔT(DC) = ${watts(style, direct(), 4)} × ${num(style, RF_K, 1, 'K')} / ${num(style, DC_K, 1, 'K')} = ${watts(style, power(), 3)}`,
    ),
    words: 'The two rises were nearly the same; what differs is corrected in proportion.',
  },
  ...chainSteps(sheet()),
];

/** Scenario: DC substitution with an insulated load. Invented data. */
export const heatOfDirectCurrent: ChainExample = {
  kind: 'chain',
  slug: 'heat-of-direct-current',
  title: 'The same heat by direct current',
  summary:
    'A load warms by 14.2\u00a0K with the transmitter and by 14.0\u00a0K with 2\u00a0W from a supply. What does the transmitter give?',
  question:
    'I put my dummy load into a foam box with a thermometer. With the carrier on it settles 14.2\u00a0K above the room. Then I heat it from the bench supply, 10.00\u00a0V and 0.1995\u00a0A, and it settles at 14.0\u00a0K. Is that a measurement?',
  wanted: 'the mean power into the load, steady carrier',
  method:
    'Substitution: radio-frequency watts compared with direct-current watts in one load. Everything multiplies, so everything is a percentage of the power, and adds as decibels.',
  space: 'decibels',
  known: () => [
    {
      what: 'Rise with RF',
      value: within(RF_K, 1, 'K', { half: THERMOMETER_K, decimals: 1, unit: 'K' }),
    },
    {
      what: 'Rise with DC',
      value: within(DC_K, 1, 'K', { half: THERMOMETER_K, decimals: 1, unit: 'K' }),
    },
    {
      what: 'Voltage',
      value: within(VOLTS, 2, 'V', { half: VOLTS_PERCENT, decimals: 1, unit: 'percent' }),
    },
    {
      what: 'Current',
      value: within(AMPERES, 4, 'A', { half: AMPERES_PERCENT, decimals: 0, unit: 'percent' }),
    },
    {
      what: 'Heat lost unequally, judged',
      value: (style) => `${num(style, LEAK_PERCENT, 0, 'percent')}, either way`,
    },
  ],
  sheet,
  steps,
  better: {
    sheet: () => withLinkAmount(withLinkAmount(sheet(), 'amperes', 0.3), 'leak', 0.5),
    words:
      'The current is read as a voltage across a known resistor, and radio frequency and direct current take turns three times, with the supply set so that the rises agree.',
  },
  mistake: () =>
    `Not waiting. A load that still warms has not reached its rise: read at nine tenths of it, the answer would be ${watts('shown', 0.9 * power(), 3)}. And never both at once: direct current and the transmitter into one load together.`,
  assumptions: [
    'Radio frequency and direct current warm the load in the same place; leads and skin effect are in the judged part.',
    'All of the power stays in the load: reflected power is not measured at all.',
    'The room keeps its temperature.',
  ],
  cautions: [
    'Only a transmitter that may be keyed for minutes on end; put a timer on a hot load and do not leave it alone.',
    'Never direct current and radio frequency into the load together.',
    'Foam chars: keep it off a load that gets hotter than a hand bears.',
  ],
  lesson: 'measuring/radio-watts-from-dc-watts',
  bench: () =>
    benchOf(sheet(), {
      setup: { method: 'dcSubstitution', resistance: ohms(50) },
      columns: { readings: [RF_K], riseDc: [DC_K], volts: [VOLTS], amperes: [AMPERES] },
      instead: {
        volts: asLimits(VOLTS_PERCENT, 'percentOfDcVolts'),
        amperes: asLimits(AMPERES_PERCENT, 'percentOfDcAmperes'),
        'rf-rise': asLimits(THERMOMETER_K, 'kelvinRf'),
        'dc-rise': asLimits(THERMOMETER_K, 'kelvinDc'),
      },
    }),
};
