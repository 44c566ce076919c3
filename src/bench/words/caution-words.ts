import {
  type Caution,
  type InputLevel,
  type InputVolts,
  type PadHeat,
  powerToLevel,
  type UpperPowers,
} from '#compute';
import type { MethodKind } from '../../sheet/method.ts';
import { readingOf } from '../../sheet/scatter.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { againstLimit, cautionNumber } from '../../text/caution-numbers.ts';
import { isolated } from '../../text/isolate.ts';
import { decimalsFor } from '../../text/place.ts';
import { dbText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { cautionStrings as strings } from './caution-strings.ts';

/** A caution as a sentence. */
export interface CautionWords {
  readonly key: string;
  readonly text: string;
  /** Whether a stated limit is passed. */
  readonly exceeded: boolean;
}

/** A part that takes less than this stays cold, in watts: only parts meant to take power, or that get hot, are told. */
const COLD_W = 0.1;

const { power: watts, level } = cautionNumber;
/** Decimals beyond which what is left up to a limit, or over it, is none. */
const MOST_DECIMALS = 4;

/** By which method a sheet is. */
export const methodOf = (sheet: Sheet): MethodKind => readingOf(sheet).setup.method;

/** What everything below is reckoned with. */
export function cautionBasis(style: Style, upper: UpperPowers | undefined): string {
  if (upper === undefined) return strings.noBasis;
  const { mean, peakEnvelope } = upper;
  return mean < peakEnvelope
    ? strings.basisKeyed({ peak: watts(style, peakEnvelope), mean: watts(style, mean) })
    : strings.basis({ level: level(style, powerToLevel(peakEnvelope)), power: watts(style, peakEnvelope) });
}

/**
 * The cautions that concern a sheet, in order: heat where a part is meant to take power or gets warm; what the instrument of the
 * method minds, which is a level for a meter or a load, peak volts for an oscilloscope, reverse volts for a detector's diode.
 * Whatever passes a stated limit concerns it in any case.
 */
export function concerning(sheet: Sheet, cautions: readonly Caution[]): readonly Caution[] {
  const method = methodOf(sheet);
  return cautions.filter((caution) => {
    if (caution.status === 'exceeded') return true;
    if (caution.code === 'padHeat') return heatMatters(caution, sheet);
    if (caution.code === 'inputPeak') return method === 'oscilloscope';
    if (caution.code === 'diodeReverse') return method === 'peakDetector';
    return (
      (caution.code === 'inputLevel' && caution.damageLevel !== undefined) ||
      (method !== 'oscilloscope' && method !== 'peakDetector')
    );
  });
}

function heatMatters({ id, rating, heat }: PadHeat, { links }: Sheet): boolean {
  const isPad = links.some((link) => link.id === id && link.kind === 'pad');
  return isPad || rating !== undefined || heat >= COLD_W;
}

/** The cautions that have something to say, in the order of the chain from the transmitter. */
export function cautionWords(
  style: Style,
  { sheet, cautions }: { sheet: Sheet; cautions: readonly Caution[] },
): readonly CautionWords[] {
  const labelOf = (id: string): string => isolated(sheet.links.find((link) => link.id === id)?.label ?? id);
  return concerning(sheet, cautions).map((caution): CautionWords => {
    const exceeded = caution.status === 'exceeded';
    if (caution.code === 'padHeat')
      return { key: `heat-${caution.id}`, text: heatWords(style, caution, labelOf(caution.id)), exceeded };
    const { without, code } = caution;
    const { what, tail } = arrivingWords(style, caution);
    const head =
      without === undefined
        ? strings.gets(strings.instrument[methodOf(sheet)], what)
        : strings.without({ label: labelOf(without), what });
    return { key: `${code}-${without ?? 'all'}`, text: `${head}: ${tail}.`, exceeded };
  });
}

function heatWords(style: Style, { incident, heat, rating, status }: PadHeat, label: string): string {
  const isInput = rating?.of === 'input';
  const value = isInput ? incident : heat;
  const rated = againstLimit(style, 'power', { value, limit: rating?.power, status });
  const head = strings.heat({
    label,
    incident: isInput ? rated.value : watts(style, incident),
    heat: isInput ? watts(style, heat) : rated.value,
  });
  if (rated.limit === undefined) return `${head}; ${strings.unrated}.`;
  return `${head}; ${status === 'exceeded' ? strings.overrated(rated.limit) : strings.rated(rated.limit)}.`;
}

interface Arriving {
  readonly what: string;
  /** What that is to the instrument. */
  readonly tail: string;
}

const arrivingWords = (style: Style, caution: InputLevel | InputVolts): Arriving =>
  caution.code === 'inputLevel' ? levelWords(style, caution) : voltsWords(style, caution);

/** Decibels that are left or too many: where that is little, with the digits that show it. */
const marginText = (style: Style, db: number): string =>
  dbText(style, {
    db,
    decimals: db > 10 ** -MOST_DECIMALS ? Math.max(1, decimalsFor(db) - 1) : 1,
  });

function levelWords(style: Style, { level: arriving, margin, damageLevel, status }: InputLevel): Arriving {
  const { value, limit } = againstLimit(style, 'level', { value: arriving, limit: damageLevel, status });
  if (margin === undefined || limit === undefined) return { what: value, tail: strings.noDamageLevel };
  const room = { margin: marginText(style, Math.abs(margin)), damage: limit };
  return { what: value, tail: status === 'exceeded' ? strings.beyond(room) : strings.margin(room) };
}

function voltsWords(style: Style, { code, volts, largest, status }: InputVolts): Arriving {
  const { value, limit } = againstLimit(style, 'volts', { value: volts, limit: largest, status });
  const what = code === 'inputPeak' ? strings.peak(value) : strings.reverse(value);
  if (limit === undefined) return { what, tail: strings.noDamageLevel };
  return { what, tail: status === 'exceeded' ? strings.tooMuch(limit) : strings.within(limit) };
}
