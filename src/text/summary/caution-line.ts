import type { Caution, CautionStatus } from '#compute';
import { type AgainstLimit, againstLimit, type CautionKind, cautionNumber } from '../caution-numbers.ts';
import type { Style } from '../style.ts';
import { line, type Piece } from './piece.ts';

type Part = string | Piece | ((style: Style) => string);

const power =
  (powerW: number) =>
  (style: Style): string =>
    cautionNumber.power(style, powerW);

/** A number of a caution and its limit, each as a part. */
function numbers(
  kind: CautionKind,
  given: AgainstLimit,
): { readonly value: Part; readonly limit: Part | undefined } {
  const texts = (style: Style) => againstLimit(style, kind, given);
  return {
    value: (style) => texts(style).value,
    limit: given.limit === undefined ? undefined : (style) => texts(style).limit ?? '',
  };
}

/** "more than 1.0 W, its rating", "its rating is 1.0 W", "no rating is stated". */
function against(status: CautionStatus, name: string, limit: Part | undefined): readonly Part[] {
  if (limit === undefined || status === 'unrated') return [`; no ${name} is stated: look it up`];
  return status === 'exceeded' ? [`: TOO MUCH, ${name} `, limit] : [`; ${name} `, limit];
}

function parts(caution: Caution, labelOf: (id: string) => string): readonly Part[] {
  if (caution.code === 'padHeat') {
    const { id, heat, incident, rating, status } = caution;
    const isInput = rating?.of === 'input';
    const name = isInput ? 'rated input power' : 'rated heat';
    const rated = numbers('power', { value: isInput ? incident : heat, limit: rating?.power, status });
    return [
      { foreign: labelOf(id) },
      ': ',
      isInput ? rated.value : power(incident),
      ' in, ',
      isInput ? power(heat) : rated.value,
      ' of heat',
      ...against(status, name, rated.limit),
    ];
  }
  const where: readonly Part[] =
    caution.without === undefined
      ? ['At the input: ']
      : ['Without ', { foreign: labelOf(caution.without) }, ', at the input: '];
  const { status } = caution;
  if (caution.code === 'inputLevel') {
    const { value, limit } = numbers('level', { value: caution.level, limit: caution.damageLevel, status });
    return [...where, value, ...against(status, 'damage level', limit)];
  }
  const what = caution.code === 'inputPeak' ? ' peak' : ' reverse voltage on the diode';
  const { value, limit } = numbers('volts', { value: caution.volts, limit: caution.largest, status });
  return [...where, value, what, ...against(status, 'largest', limit)];
}

/** A caution as a line of a summary; computed by the sums, only worded here. */
export const cautionLine = (caution: Caution, labelOf: (id: string) => string) =>
  line('caution', 'Caution. ', ...parts(caution, labelOf));
