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
import { isolated } from '../../text/isolate.ts';
import { powerText } from '../../text/power-text.ts';
import { dbText, levelText, quantityText } from '../../text/quantity-text.ts';
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

const watts = (style: Style, powerW: number): string => powerText(style, { powerW, digits: 2 });
const level = (style: Style, levelDbm: number): string => levelText(style, { levelDbm, decimals: 1 });
const volts = (style: Style, value: number): string => quantityText(style, { value, decimals: 1, unit: 'V' });

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
    const what = arrivingWords(style, caution);
    const head =
      without === undefined
        ? strings.gets(strings.instrument[methodOf(sheet)], what)
        : strings.without({ label: labelOf(without), what });
    const tail = code === 'inputLevel' ? levelTail(style, caution) : voltsTail(style, caution);
    return { key: `${code}-${without ?? 'all'}`, text: `${head}: ${tail}.`, exceeded };
  });
}

function heatWords(style: Style, { incident, heat, rating, status }: PadHeat, label: string): string {
  const head = strings.heat({ label, incident: watts(style, incident), heat: watts(style, heat) });
  const rated = rating && watts(style, rating.power);
  const tail =
    rated === undefined
      ? strings.unrated
      : status === 'exceeded'
        ? strings.overrated(rated)
        : strings.rated(rated);
  return `${head}; ${tail}.`;
}

function arrivingWords(style: Style, caution: InputLevel | InputVolts): string {
  if (caution.code === 'inputLevel') return level(style, caution.level);
  const text = volts(style, caution.volts);
  return caution.code === 'inputPeak' ? strings.peak(text) : strings.reverse(text);
}

function levelTail(style: Style, { margin, damageLevel, status }: InputLevel): string {
  if (margin === undefined || damageLevel === undefined) return strings.noDamageLevel;
  const room = {
    margin: dbText(style, { db: Math.abs(margin), decimals: 1 }),
    damage: level(style, damageLevel),
  };
  return status === 'exceeded' ? strings.beyond(room) : strings.margin(room);
}

function voltsTail(style: Style, { largest, status }: InputVolts): string {
  if (largest === undefined) return strings.noDamageLevel;
  const text = volts(style, largest);
  return status === 'exceeded' ? strings.tooMuch(text) : strings.within(text);
}
