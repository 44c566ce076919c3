import type { TraceLabels } from '../../figures/Trace.tsx';
import { type Trace, traceSums } from '../../sheet/trace.ts';
import { slipOutcome, TRACE_SLIPS, type TraceSlip } from '../../sheet/trace-slips.ts';
import { timesText } from '../../text/factor-text.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, levelText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { UnitName } from '../../text/units.ts';
import type { Answer } from '../parts/answer.ts';
import { type TraceState, traceOf } from './spec.ts';
import { strings } from './strings.ts';

/** Digits of powers and volts: a trace is read to three at best. */
const DIGITS = 3;

const watts = (style: Style, powerW: number): string => powerText(style, { powerW, digits: DIGITS });

/** Volts to three significant digits, two decimals at most. */
function volts(style: Style, value: number, unit: UnitName): string {
  const decimals = value >= 100 ? 0 : value >= 10 ? 1 : 2;
  return quantityText(style, { value, decimals, unit });
}

/** The measures of a trace in words, each with its unit. */
function measuresText(style: Style, trace: Trace): string {
  const { peak, rms, averageV } = traceSums(trace);
  return strings.measures({
    peak: volts(style, peak, 'Vp'),
    rms: volts(style, rms, 'Vrms'),
    average: volts(style, averageV, 'V'),
  });
}

/** Mean power and level of a trace: `497 mW, 26.96 dBm`. */
function powerAnswer(style: Style, trace: Trace): string {
  const { power, level } = traceSums(trace);
  return `${watts(style, power)}, ${levelText(style, { levelDbm: level, decimals: 2 })}`;
}

/** One slip on a trace: the power that it says, the factor, and the error in dB. */
export interface SlipWords {
  readonly slip: TraceSlip;
  readonly name: string;
  readonly says: string;
  readonly factor: string;
  readonly error: string;
  /** Whether it changes nothing here. */
  readonly harmless: boolean;
}

/** Below this many dB an error is not shown as one. */
const SHOWN_DB = 0.005;

/** What a slip makes of a trace, in words. */
function slipWords(style: Style, slip: TraceSlip, trace: Trace): SlipWords {
  const { power, factor, error } = slipOutcome(slip, trace);
  const harmless = Math.abs(error) < SHOWN_DB;
  return {
    slip,
    name: strings.slips[slip],
    says: watts(style, power),
    factor: timesText(style, { ratio: factor, digits: 2 }),
    error: harmless ? strings.right : changeText(style, { value: error, decimals: 2, unit: 'dB' }),
    harmless,
  };
}

/** Every slip on a trace, for the table. */
export const slipTable = (trace: Trace): readonly SlipWords[] =>
  TRACE_SLIPS.map((slip) => slipWords('shown', slip, trace));

/** Words beside the marks of the figure. */
export function traceLabels(state: TraceState): TraceLabels {
  const trace = traceOf(state);
  const { peakToPeak, peak, rms, averageV, power, greatestW } = traceSums(trace);
  const { marks } = strings;
  const slipped = state.slip === 'none' ? undefined : slipOutcome(state.slip, trace).power;
  const of = (name: string, amount: string): readonly string[] => [`${name} ${amount}`];
  return {
    peak: of(marks.peak, volts('shown', peak, 'V')),
    rms: of(marks.rms, volts('shown', rms, 'V')),
    average: of(marks.average, volts('shown', averageV, 'V')),
    whole: [marks.whole, volts('shown', peakToPeak, 'V')],
    greatest: of(marks.greatest, watts('shown', greatestW)),
    mean: of(marks.mean, watts('shown', power)),
    slipped: slipped === undefined ? [] : of(marks.slipped, watts('shown', slipped)),
  };
}

/** The three answers: the measures, the power, and the slip that is looked at. */
export function answersOf(state: TraceState): readonly Answer[] {
  const trace = traceOf(state);
  const load = quantityText('shown', { value: state.load, decimals: 1, unit: 'ohm' });
  return [
    { figure: volts('shown', state.peakToPeak, 'Vpp'), words: measuresText('shown', trace) },
    { figure: powerAnswer('shown', trace), words: strings.power(load) },
    slipAnswer(state),
  ];
}

function slipAnswer(state: TraceState): Answer {
  if (state.slip === 'none') return { figure: strings.noSlip, words: strings.noSlipWords };
  const { name, says, factor, error, harmless } = slipWords('shown', state.slip, traceOf(state));
  const off = harmless ? strings.sameHere : strings.off({ factor, error });
  return { figure: strings.slipped(says), words: `${name}: ${off}` };
}

/** The settled state in one spoken sentence. */
export function summarise(state: TraceState): string {
  const trace = traceOf(state);
  const wave = strings.settings.choices.wave[state.wave];
  const base = `${wave}, ${volts('spoken', state.peakToPeak, 'Vpp')}: ${measuresText('spoken', trace)}. ${powerAnswer('spoken', trace)}.`;
  if (state.slip === 'none') return base;
  const { says, error } = slipWords('spoken', state.slip, trace);
  return `${base} ${strings.slipsSaid[state.slip] ?? strings.slips[state.slip]}: ${says}, ${error}.`;
}
