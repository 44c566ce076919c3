import type { Caution, CautionStatus } from '#compute';
import { powerText } from '../power-text.ts';
import { levelText, quantityText } from '../quantity-text.ts';
import type { Style } from '../style.ts';
import { line, type Piece } from './piece.ts';

/** Digits of a heat or a power in a caution: what it warns of is never known better. */
const DIGITS = 2;

type Part = string | Piece | ((style: Style) => string);

const power =
  (powerW: number) =>
  (style: Style): string =>
    powerText(style, { powerW, digits: DIGITS });
const volts =
  (value: number) =>
  (style: Style): string =>
    quantityText(style, { value, decimals: 1, unit: 'V' });
const level =
  (levelDbm: number) =>
  (style: Style): string =>
    levelText(style, { levelDbm, decimals: 1 });

/** "more than 1.0 W, its rating", "its rating is 1.0 W", "no rating is stated". */
function against(status: CautionStatus, name: string, limit: Part | undefined): readonly Part[] {
  if (limit === undefined || status === 'unrated') return [`; no ${name} is stated: look it up`];
  return status === 'exceeded' ? [`: TOO MUCH, ${name} `, limit] : [`; ${name} `, limit];
}

function parts(caution: Caution, labelOf: (id: string) => string): readonly Part[] {
  if (caution.code === 'padHeat') {
    const { id, heat, incident, rating, status } = caution;
    const name = rating?.of === 'input' ? 'rated input power' : 'rated heat';
    return [
      { foreign: labelOf(id) },
      ': ',
      power(incident),
      ' in, ',
      power(heat),
      ' of heat',
      ...against(status, name, rating && power(rating.power)),
    ];
  }
  const where: readonly Part[] =
    caution.without === undefined
      ? ['At the input: ']
      : ['Without ', { foreign: labelOf(caution.without) }, ', at the input: '];
  if (caution.code === 'inputLevel') {
    const { damageLevel } = caution;
    const limit = damageLevel === undefined ? undefined : level(damageLevel);
    return [...where, level(caution.level), ...against(caution.status, 'damage level', limit)];
  }
  const what = caution.code === 'inputPeak' ? ' peak' : ' reverse voltage on the diode';
  const limit = caution.largest === undefined ? undefined : volts(caution.largest);
  return [...where, volts(caution.volts), what, ...against(caution.status, 'largest', limit)];
}

/** A caution as a line of a summary; computed by the sums, only worded here. */
export const cautionLine = (caution: Caution, labelOf: (id: string) => string) =>
  line('caution', 'Caution. ', ...parts(caution, labelOf));
