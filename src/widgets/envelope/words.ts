import { type PowerKind, powerRatioToDb } from '#compute';
import {
  type Delivery,
  meanOf,
  type Plane,
  powerOfKind,
  powersAt,
  shareOf,
  supplyShares,
} from '../../sheet/keyed.ts';
import { keyedSlip } from '../../sheet/keyed-slips.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type KeyedState, keyedOf } from './spec.ts';
import { strings } from './strings.ts';

const DIGITS = 3;
/** Below this many dB an error is not shown as one. */
const SHOWN_DB = 0.005;

export const watts = (style: Style, power: number): string =>
  powerText(style, { powerW: power, digits: DIGITS });
export const share = (style: Style, ratio: number): string =>
  percentText(style, { percent: 100 * ratio, decimals: 0 });
const db = (style: Style, value: number): string => changeText(style, { value, decimals: 2, unit: 'dB' });

/** The power of one kind, of one wave, at one plane; undefined where there is none. */
export function powerThere(
  state: KeyedState,
  { kind, plane, delivery }: { kind: PowerKind; plane: Plane; delivery: Delivery },
): number | undefined {
  const keyed = keyedOf(state);
  const power = powerOfKind(keyed, kind);
  return power === undefined ? undefined : powersAt(plane, { ...keyed, power })[delivery];
}

/** The answers: the power that is meant, what a meter that averages shows, the efficiency, the slip. */
export function answersOf(state: KeyedState, style: Style = 'shown'): readonly Answer[] {
  const own = [meantAnswer(style, state), meterAnswer(style, state), efficiencyAnswer(style, state)];
  return state.slip === 'none' ? own : [...own, slipAnswer(style, state, state.slip)];
}

function meantAnswer(style: Style, state: KeyedState): Answer {
  const power = powerThere(state, state);
  if (power === undefined) return { figure: strings.noCarrier, words: strings.noCarrierWords };
  const { measurand } = strings;
  const words = [
    `${measurand.kind[state.kind]} ${measurand.delivery[state.delivery]}`,
    measurand.plane[state.plane],
    // carrier power is what it gives without modulation, however it is keyed otherwise
    ...(state.kind === 'carrier' ? [] : [measurand.keying[state.keying]]),
  ];
  return { figure: watts(style, power), words: words.join(', ') };
}

function meterAnswer(style: Style, state: KeyedState): Answer {
  const keyed = keyedOf(state);
  const ratio = shareOf(keyed.keying);
  const words =
    ratio === 1
      ? strings.same
      : strings.ratio({ share: share(style, ratio), db: db(style, powerRatioToDb(ratio)) });
  return { figure: strings.meterShows(watts(style, meanOf(keyed))), words };
}

function efficiencyAnswer(style: Style, state: KeyedState): Answer {
  const shares = supplyShares(keyedOf(state));
  if (shares === undefined) {
    const tones = state.keying === 'twoEqualTones';
    const words = tones ? strings.noEfficiencyTones : strings.noEfficiencyMore;
    return { figure: strings.noEfficiency, words };
  }
  const { output, input, heat, efficiency } = shares;
  return {
    figure: strings.efficiency(share(style, efficiency)),
    words: strings.efficiencyWords({
      output: watts(style, output),
      input: watts(style, input),
      heat: watts(style, heat),
    }),
  };
}

function slipAnswer(style: Style, state: KeyedState, slip: Exclude<KeyedState['slip'], 'none'>): Answer {
  const outcome = keyedSlip(slip, keyedOf(state));
  const name = strings.slips[slip];
  if (outcome === undefined) return { figure: name, words: strings.nothingToGoBy };
  const { of, stated, truth, error } = outcome;
  const text = (value: number): string => (of === 'power' ? watts(style, value) : share(style, value));
  const off = Math.abs(error) < SHOWN_DB ? db(style, 0) : db(style, error);
  return {
    figure: of === 'power' ? strings.stated(text(stated)) : strings.statedEfficiency(text(stated)),
    words: strings.off({ slip: name, truth: text(truth), error: off }),
  };
}

/** The settled state in one spoken sentence. */
export const summarise = (state: KeyedState): string =>
  answersOf(state, 'spoken')
    .map(({ figure, words }) => `${figure}, ${words}.`)
    .join(' ');

/** The power that the slip of a state states, where it is a power. */
export function slippedPower(state: KeyedState): number | undefined {
  if (state.slip === 'none') return undefined;
  const outcome = keyedSlip(state.slip, keyedOf(state));
  return outcome?.of === 'power' ? outcome.stated : undefined;
}

/** Words beside the marks of the envelope. */
export function envelopeLabels(state: KeyedState) {
  const { marks } = strings;
  const slipped = slippedPower(state);
  return {
    peak: `${marks.peak} ${watts('shown', state.peak)}`,
    carrier: `${marks.carrier} ${watts('shown', state.peak)}`,
    mean: `${marks.mean} ${watts('shown', meanOf(keyedOf(state)))}`,
    slipped: slipped === undefined ? '' : `${marks.slipped} ${watts('shown', slipped)}`,
  };
}
