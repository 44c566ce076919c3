import {
  amplitudeRatioToDb,
  dbToPercentOfPower,
  gainDb,
  gaussianLossDb,
  heatInPad,
  judge,
  levelDbm,
  levelToPower,
  levelToVolts,
  ohms,
  peakOfRms,
  percentLimitsToDb,
  percentOfPowerToDb,
  singlePoleLossDb,
} from '#compute';
import { defaultState } from '../../address/field-spec.ts';
import { upperPower } from '../../sheet/found.ts';
import {
  bandwidthOf,
  clubScope,
  edgeHz,
  gainOfReading,
  LARGEST_SHARE_OF_BANDWIDTH,
  LOAD_PERCENT,
  rollOffDb,
  type ScopeUse,
  scopeFound,
} from '../../sheet/scope.ts';
import { deviationsText, plusMinusText } from '../../text/deviation-text.ts';
import { intervalText } from '../../text/interval-text.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, dbText, levelText, numberText, quantityText } from '../../text/quantity-text.ts';
import { verdictLabel } from '../../text/words.ts';
import { bandText, largestParts, methodLevel } from '../../widgets/parts/level-words.ts';
import { sharePercent, worstText } from '../../widgets/parts/method-words.ts';
import { scopeSpec } from '../../widgets/scope/spec.ts';
import { partsOf } from '../../widgets/scope/words.ts';

const SISTER_HZ = 145e6;
const HIGHER_HZ = 14e6;
const COARSE_V = 40;
const FAST_HZ = 500e6;
const SLOW_PROBE_HZ = 6e6;
/** Tolerance of an ordinary resistor, in percent. */
const MARKED_PERCENT = 5;
const SPECIFICATION = { lower: 25.5, upper: 28.5 };
/** The pad that the club has, and how much less than stated it may take. */
const PAD = { lossDb: 20, halfWidthDb: 0.5 };
const INPUT = ohms(50);

function resultOf(use: ScopeUse) {
  const found = scopeFound(use);
  if (!found.inRange) throw new RangeError(`scopeValues: use must be in range, got ${found.reason.code}`);
  return found.result;
}

const band = (use: ScopeUse): string => bandText('shown', resultOf(use).propagation.expanded);
const db = (value: number): string => dbText('shown', { db: value, decimals: 2 });
const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const watts = (powerW: number): string => powerText('shown', { powerW, digits: 3 });
const megahertz = (hz: number): string =>
  quantityText('shown', { value: hz / 1e6, decimals: 1, unit: 'MHz' });
const share = (value: number): string => numberText('shown', { value, decimals: 2 });

const limitsDb = (limits: { lower: number; upper: number }): string =>
  deviationsText('shown', { ...limits, decimals: 2, unit: 'dB' });

/** What the load may be wrong by, as power: the other way round. */
const ofLoad = (percent: number): string =>
  limitsDb({ lower: 0 - percentOfPowerToDb(percent), upper: 0 - percentOfPowerToDb(-percent) });

function gainPower(percent: number): string {
  const { lower, upper } = percentLimitsToDb({ percent, quantity: 'volts', of: 'reading' });
  return deviationsText('shown', {
    lower: dbToPercentOfPower(lower),
    upper: dbToPercentOfPower(upper),
    decimals: 1,
    unit: 'percent',
  });
}

/** The verdict of propagation with U as guard band, the rule of the club's sheet. */
function verdict(use: ScopeUse): string {
  const result = resultOf(use);
  const judged = judge({
    result: { ...result, whole: { unavailable: 'not-a-sum' } },
    specification: SPECIFICATION,
    rule: { kind: 'guardBand', multiplier: 1 },
    decidingInterval: 'propagation',
  });
  return verdictLabel(judged.verdict).replace("'", '\u2019');
}

/** What stands at an oscilloscope's own input behind a pad, at the upper limit. */
function cautionValues(use: ScopeUse): Readonly<Record<string, () => string>> {
  const power = upperPower({ inRange: false, reason: undefined });
  const upper = levelDbm(SPECIFICATION.upper);
  const volts = (level: number, resistance: number) =>
    levelToVolts({ level: levelDbm(level), resistance: ohms(resistance) });
  const behind = upper - PAD.lossDb + PAD.halfWidthDb;
  const vrms = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'Vrms' });
  return {
    upper: () => `${levelText('shown', { levelDbm: upper, decimals: 1 })} or ${watts(levelToPower(upper))}`,
    heat: () => watts(power),
    upperVolts: () => vrms(volts(upper, INPUT)),
    loadVolts: () => vrms(volts(upper, use.loadOhm)),
    upperPeak: () =>
      quantityText('shown', { value: peakOfRms(volts(upper, use.loadOhm)), decimals: 1, unit: 'V' }),
    padHeat: () => watts(heatInPad({ power, gain: gainDb(-PAD.lossDb - PAD.halfWidthDb) })),
    padLevel: () => levelText('shown', { levelDbm: behind, decimals: 1 }),
    padVolts: () => vrms(volts(behind, INPUT)),
  };
}

/** What the table of the figure says of a part. */
const statedOf = (part: string): string =>
  partsOf(defaultState(scopeSpec.fields)).find(({ id }) => id === part)?.stated ?? '';

/** Numbers about frequency: what is allowed for, and where nothing is. */
function rangeValues(use: ScopeUse): Readonly<Record<string, () => string>> {
  const sister = SISTER_HZ / bandwidthOf(use);
  const apart = singlePoleLossDb(LARGEST_SHARE_OF_BANDWIDTH) - gaussianLossDb(LARGEST_SHARE_OF_BANDWIDTH);
  const slow = { ...use, probeHz: SLOW_PROBE_HZ };
  return {
    together: () => megahertz(bandwidthOf(use)),
    edge: () => megahertz(edgeHz(use)),
    largestShare: () => share(LARGEST_SHARE_OF_BANDWIDTH),
    shareAt14: () => share(HIGHER_HZ / bandwidthOf(use)),
    rollOffAt14: () => db(rollOffDb({ ...use, frequencyHz: HIGHER_HZ })),
    sisterShare: () => share(sister),
    sisterPole: () => db(singlePoleLossDb(sister)),
    sisterBell: () => db(gaussianLossDb(sister)),
    edgeApart: () => db(apart),
    sisterCost: () =>
      `${change(singlePoleLossDb(sister))} by one guess, ${change(gaussianLossDb(sister))} by another`,
    probeCost: () =>
      `no number: ${quantityText('shown', { value: use.frequencyHz / 1e6, decimals: 2, unit: 'MHz' })} is ${share(use.frequencyHz / bandwidthOf(slow))} of the bandwidth that is left`,
  };
}

/** Numbers of the lesson on the oscilloscope, all from the club's own. */
export function scopeValues(): Readonly<Record<string, () => string>> {
  const use = clubScope();
  const coarse = { ...use, gainOf: 'fullScale', screenV: COARSE_V } as const;
  const fast = { ...use, scopeHz: FAST_HZ, probeHz: FAST_HZ };
  const level = () => methodLevel('shown', resultOf(use));
  const largest = () => largestParts(resultOf(use));
  const open = scopeFound({ ...use, end: 'twoLoads' });
  return {
    read: () => quantityText('shown', { value: use.peakToPeakV, decimals: 1, unit: 'Vpp' }),
    load: () => quantityText('shown', { value: use.loadOhm, decimals: 1, unit: 'ohm' }),
    level: () => level().figure,
    watts: () => level().words,
    worst: () => worstText('shown', resultOf(use)),
    specification: () => intervalText('shown', { ...SPECIFICATION, decimals: 1, unit: 'dBm' }),
    verdict: () => verdict(use),
    gainDb: () => limitsDb(percentLimitsToDb({ percent: use.gainPercent, quantity: 'volts', of: 'reading' })),
    gainPower: () => gainPower(use.gainPercent),
    gainShare: () => sharePercent('shown', largest().share),
    left: () => bandText('shown', largest().left),
    faster: () => band(fast),
    fastCost: () => `${band(fast)} is due, whatever its bandwidth`,
    fullScalePercent: () =>
      plusMinusText('shown', { halfWidth: gainOfReading(coarse), decimals: 1, unit: 'percent' }),
    fineBand: () => band({ ...use, gainOf: 'fullScale' }),
    coarseBand: () => band(coarse),
    fullScaleCost: () => `${band({ ...coarse, gainOf: 'reading' })} claimed where ${band(coarse)} is due`,
    loadDb: () => ofLoad(LOAD_PERCENT),
    markedDb: () => ofLoad(MARKED_PERCENT),
    probe: () => statedOf('probe'),
    harmonics: () => statedOf('harmonics'),
    openCost: () => `no number; from a matched source it would be ${change(amplitudeRatioToDb(2))}`,
    twoCost: () =>
      open.inRange || open.reason.code !== 'twoLoads'
        ? ''
        : `no number: the line ends in ${quantityText('shown', { value: open.reason.togetherOhm, decimals: 1, unit: 'ohm' })}`,
    ...rangeValues(use),
    ...cautionValues(use),
  };
}
