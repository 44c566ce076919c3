import type { Sitting } from '../questions/bank/types.ts';
import { decimalsFor } from '../text/place.ts';
import { numberText } from '../text/quantity-text.ts';
import { unitText } from '../text/units.ts';
import { type PlaceDrawing, placeDrawing } from './place-drawing.ts';

/** A question with everything that is shown of it as text or strokes, so that a page which shows it need not make them. */
export interface ShownSitting extends Sitting {
  /** The unit beside a field for a number. */
  readonly unit?: string;
  /** The figure with places. */
  readonly drawing?: PlaceDrawing;
}

const onAxis = (value: number): string =>
  numberText('shown', { value, decimals: Number.isInteger(value) ? 0 : decimalsFor(Math.abs(value) % 1) });

/** Makes the texts and strokes of a question. */
export function shown(sitting: Sitting): ShownSitting {
  const { payload } = sitting;
  if (payload.kind === 'typed') return { ...sitting, unit: unitText('shown', payload.unit, '2') };
  return payload.kind === 'place' ? { ...sitting, drawing: placeDrawing(payload.figure, onAxis) } : sitting;
}
