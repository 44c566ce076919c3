import {
  amplitudeRatioToDb,
  averageMeterRatio,
  dbToPercentOfPower,
  dbToPowerRatio,
  levelDbm,
  levelToPower,
  levelToVolts,
  ohms,
  percentLimitsToDb,
  type Waveform,
} from '#compute';
import { defaultState } from '../../address/field-spec.ts';
import { clubSheet } from '../../sheet/club.ts';
import { type Trace, traceSums } from '../../sheet/trace.ts';
import { slipOutcome, type TraceSlip } from '../../sheet/trace-slips.ts';
import { deviationsText } from '../../text/deviation-text.ts';
import { timesText } from '../../text/factor-text.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, levelText, quantityText } from '../../text/quantity-text.ts';
import type { UnitName } from '../../text/units.ts';
import { traceOf, traceSpec } from '../../widgets/trace/spec.ts';

/** A load that is not the usual one, for the slip of taking it for 50 ohm. */
const OTHER_LOAD_OHM = 75;
/** What an oscilloscope's data sheet commonly allows, and a round number for a rule, in percent of volts. */
const VERTICAL_PERCENT = 3;
const ROUND_PERCENT = 5;
const NOMINAL_DBM = 27;

const watts = (powerW: number): string => powerText('shown', { powerW, digits: 3 });
const volts = (value: number, unit: UnitName): string =>
  quantityText('shown', { value, decimals: value >= 10 ? 1 : 2, unit });
const db = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const percent = (value: number): string => changeText('shown', { value, decimals: 1, unit: 'percent' });

/** How far a slip is off on a trace: `4.0 times the power, +6.02 dB`. */
function cost(slip: TraceSlip, trace: Trace): string {
  const { factor, error } = slipOutcome(slip, trace);
  return `${timesText('shown', { ratio: factor, digits: 2 })} the power, ${db(error)}`;
}

/** A change of volts by so many percent, as a change of power. */
function ofPower(voltsPercent: number): string {
  const { lower, upper } = percentLimitsToDb({ percent: voltsPercent, quantity: 'volts', of: 'reading' });
  return deviationsText('shown', {
    lower: dbToPercentOfPower(lower),
    upper: dbToPercentOfPower(upper),
    decimals: 2,
    unit: 'percent',
  });
}

/** The same as decibels. */
function inDb(voltsPercent: number): string {
  const { lower, upper } = percentLimitsToDb({ percent: voltsPercent, quantity: 'volts', of: 'reading' });
  return deviationsText('shown', { lower, upper, decimals: 2, unit: 'dB' });
}

const across = (level: number): string =>
  quantityText('shown', {
    value: levelToVolts({ level: levelDbm(level), resistance: ohms(50) }),
    decimals: 2,
    unit: 'Vrms',
  });

/** Numbers of the lesson from a trace to watts: the trace of its figure, and what slips make of it. */
export function voltsValues(): Readonly<Record<string, () => string>> {
  const trace = traceOf(defaultState(traceSpec.fields));
  const sums = traceSums(trace);
  const shaped = (wave: Waveform): Trace => ({ ...trace, wave });
  const upper = clubSheet().specification.upper ?? NOMINAL_DBM;
  return {
    whole: () => volts(sums.peakToPeak, 'Vpp'),
    peak: () => volts(sums.peak, 'V'),
    rms: () => volts(sums.rms, 'V'),
    average: () => volts(sums.averageV, 'V'),
    power: () => watts(sums.power),
    level: () => levelText('shown', { levelDbm: sums.level, decimals: 2 }),
    greatest: () => watts(sums.greatestW),
    wholeAsPeak: () => cost('wholeAsPeak', trace),
    wholeAsRms: () => cost('wholeAsRms', trace),
    peakAsRms: () => cost('peakAsRms', trace),
    squarePower: () => watts(traceSums(shaped('square')).power),
    trianglePower: () => watts(traceSums(shaped('triangle')).power),
    sineForSquare: () => cost('sineForAll', shaped('square')),
    sineForTriangle: () => cost('sineForAll', shaped('triangle')),
    averageSquare: () => percent(100 * (averageMeterRatio('square') - 1)),
    averageTriangle: () => percent(100 * (averageMeterRatio('triangle') - 1)),
    averageCost: () => cost('averageMeter', shaped('square')),
    assumedLoad: () => cost('assumedLoad', { ...trace, loadOhm: OTHER_LOAD_OHM }),
    probe: () => cost('probe', trace),
    probeDb: () => db(slipOutcome('probe', trace).error),
    tenLog: () => cost('tenLog', trace),
    openVolts: () => db(amplitudeRatioToDb(2)),
    openTimes: () => timesText('shown', { ratio: dbToPowerRatio(amplitudeRatioToDb(2)), digits: 1 }),
    vertical: () => ofPower(VERTICAL_PERCENT),
    verticalDb: () => inDb(VERTICAL_PERCENT),
    round: () => ofPower(ROUND_PERCENT),
    squared: () => percent(ROUND_PERCENT ** 2),
    nominalVolts: () => across(NOMINAL_DBM),
    upperVolts: () => across(upper),
    upperPower: () => watts(levelToPower(levelDbm(upper))),
  };
}
