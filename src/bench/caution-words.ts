import { type Caution, type InputLevel, levelToPower, type PadHeat, type Result } from '#compute';
import type { Sheet } from '../sheet/sheet.ts';
import { powerText } from '../text/power-text.ts';
import { dbText, levelText } from '../text/quantity-text.ts';
import type { Style } from '../text/style.ts';
import { cautionStrings as strings } from './caution-strings.ts';
import { upperLevelOf } from './cautions.ts';

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

/** What everything below is reckoned with. */
export function cautionBasis(style: Style, sheet: Sheet, result: Result): string {
  const top = upperLevelOf({ specification: sheet.specification, result });
  return strings.basis({ level: level(style, top), power: watts(style, levelToPower(top)) });
}

/** The cautions that have something to say, in the order of the chain from the transmitter. */
export function cautionWords(
  style: Style,
  { sheet, cautions }: { sheet: Sheet; cautions: readonly Caution[] },
): readonly CautionWords[] {
  const labelOf = (id: string): string => sheet.links.find((link) => link.id === id)?.label ?? id;
  return cautions.flatMap((caution): CautionWords[] => {
    if (caution.code === 'padHeat') return heatWords(style, caution, sheet);
    if (caution.code === 'inputLevel') return [inputWords(style, caution, labelOf)];
    return [];
  });
}

function heatWords(
  style: Style,
  { id, incident, heat, rating, status }: PadHeat,
  sheet: Sheet,
): CautionWords[] {
  const link = sheet.links.find((candidate) => candidate.id === id);
  const matters = link?.kind === 'pad' || rating !== undefined || heat >= COLD_W;
  if (!matters || link === undefined) return [];
  const head = strings.heat({
    label: link.label,
    incident: watts(style, incident),
    heat: watts(style, heat),
  });
  const rated = rating && powerText(style, { powerW: rating.power, digits: 2 });
  const tail =
    rated === undefined
      ? strings.unrated
      : status === 'exceeded'
        ? strings.overrated(rated)
        : strings.rated(rated);
  return [{ key: `heat-${id}`, text: `${head}; ${tail}.`, exceeded: status === 'exceeded' }];
}

function inputWords(style: Style, caution: InputLevel, labelOf: (id: string) => string): CautionWords {
  const { without, margin, damageLevel, status } = caution;
  const here = level(style, caution.level);
  const head =
    without === undefined ? strings.input(here) : strings.without({ label: labelOf(without), level: here });
  const room = margin !== undefined &&
    damageLevel !== undefined && {
      margin: dbText(style, { db: Math.abs(margin), decimals: 1 }),
      damage: level(style, damageLevel),
    };
  const tail = !room
    ? strings.noDamageLevel
    : status === 'exceeded'
      ? strings.beyond(room)
      : strings.margin(room);
  return { key: `input-${without ?? 'all'}`, text: `${head}: ${tail}.`, exceeded: status === 'exceeded' };
}
