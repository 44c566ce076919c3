import { ohms, powerToLevel, powerW, voltsRms, voltsToLevel } from '#compute';
import type { Lane, Needle, Ruler, RulerTick } from '../../figures/rulers.types.ts';
import { powerText } from '../../text/power-text.ts';
import { numberText, quantityText } from '../../text/quantity-text.ts';
import type { SignalsState } from './spec.ts';
import { strings } from './strings.ts';
import { LOAD_OHM, sumsOf } from './sums.ts';
import { levelWords } from './words.ts';

/** From a little below the lowest signal to the sum of the highest two as somebody might add them. */
const domain = { lower: -5, upper: 40 };
const NAMED_STEP = 10;
const DIVISION = 5;

/** The rulers, the signals and their sums as lanes above them, and the wrong sum as a dashed line. */
export function signalsFigure(state: SignalsState): {
  rulers: readonly Ruler[];
  lanes: readonly Lane[];
  needles: readonly Needle[];
} {
  const { unrelatedDbm, coherentDbm, claimedDbm } = sumsOf(state);
  const ruler = (id: string, title: string, ticks: readonly RulerTick[]): Ruler => ({
    id,
    title,
    reading: '',
    domain,
    ticks,
  });
  const text = (dbm: number): string => levelWords('shown', dbm);
  return {
    rulers: [
      ruler('levels', strings.levels, levelTicks()),
      ruler('powers', strings.powers, powerTicks()),
      ruler('volts', strings.volts, voltTicks()),
    ],
    lanes: [
      { id: 'first', label: strings.first(text(state.first)), stops: [state.first], handle: true },
      { id: 'second', label: strings.second(text(state.second)), stops: [state.second], handle: true },
      {
        id: 'unrelated',
        label: strings.unrelatedLane(text(unrelatedDbm)),
        stops: [unrelatedDbm],
        result: true,
      },
      {
        id: 'coherent',
        label: coherentDbm === undefined ? strings.nothingLane : strings.coherentLane(text(coherentDbm)),
        stops: [coherentDbm ?? domain.lower],
        result: true,
      },
    ],
    needles: state.claim === 'none' ? [] : [{ at: claimedDbm }],
  };
}

function levelTicks(): RulerTick[] {
  const ticks: RulerTick[] = [];
  for (let at = domain.lower; at <= domain.upper; at++) {
    const rank = at % NAMED_STEP === 0 ? 0 : at % DIVISION === 0 ? 1 : 2;
    ticks.push({ at, rank, text: rank === 2 ? '' : numberText('shown', { value: at, decimals: 0 }) });
  }
  return ticks;
}

/** Powers from 1 mW to 10 W: the tens named, the ones between as divisions. */
const powerTicks = (): RulerTick[] =>
  decades([-3, -2, -1, 0, 1]).map(({ value, division }) => ({
    at: powerToLevel(powerW(value)),
    rank: division === 1 ? 0 : division === DIVISION ? 1 : 2,
    text: division === 1 ? powerText('shown', { powerW: value, digits: 1 }) : '',
  }));

/** Volts across the load, from a tenth up. */
const voltTicks = (): RulerTick[] =>
  decades([-1, 0, 1]).map(({ value, division }) => ({
    at: voltsToLevel({ volts: voltsRms(value), resistance: ohms(LOAD_OHM) }),
    rank: division === 1 ? 0 : division === 2 || division === DIVISION ? 1 : 2,
    text:
      division === 1 || division === 2 || division === DIVISION
        ? quantityText('shown', { value, decimals: value < 1 ? 1 : 0, unit: 'none' })
        : '',
  }));

const decades = (exponents: readonly number[]): readonly { value: number; division: number }[] =>
  exponents.flatMap((exponent) =>
    [1, 2, 3, 4, 5, 6, 7, 8, 9].map((division) => ({ value: Number(`${division}e${exponent}`), division })),
  );
