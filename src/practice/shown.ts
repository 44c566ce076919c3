import type { Sitting } from '../questions/bank/types.ts';
import { numberText } from '../text/quantity-text.ts';
import { unitText } from '../text/units.ts';
import { placeDrawing } from './place-drawing.ts';
import type { PlaceDrawing } from './place-parts.ts';

/** A question with everything that is shown of it as text or strokes, so that a page which shows it need not make them. */
export interface ShownSitting extends Sitting {
  /** The unit beside a field for a number. */
  readonly unit?: string;
  /** The figure with places. */
  readonly drawing?: PlaceDrawing;
}

/** A number of an axis, with as many decimals as it needs. */
function onAxis(value: number): string {
  const plain = Number(value.toPrecision(8));
  return numberText('shown', { value: plain, decimals: String(plain).split('.')[1]?.length ?? 0 });
}

/** Makes the texts and strokes of a question. */
export function shown(sitting: Sitting): ShownSitting {
  const { payload } = sitting;
  if (payload.kind === 'typed') return { ...sitting, unit: unitText('shown', payload.unit, '2') };
  return payload.kind === 'place' ? { ...sitting, drawing: placeDrawing(payload.figure, onAxis) } : sitting;
}
