import type { GyrationProps } from '../../figures/gyration.layout.ts';
import { spanFor } from '../../figures/line-band.layout.ts';
import { CERTIFICATE_FACTOR, saidDb, shapeOf, standardDb } from '../../sheet/stated.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type StatedFields, statedOf } from './spec.ts';

/** With the axis' own room: it holds twice the stated number, whatever is meant by it, so that shapes can be compared. */
const HELD = 1.6;

/** The figure's data of a state. While the knob is held the axis keeps still. */
export function figureOf({ values, held }: FieldsState<StatedFields>): Omit<GyrationProps, 'frame'> {
  const stated = statedOf(values);
  const u = standardDb(stated);
  const said = saidDb(stated);
  return {
    span: spanFor(HELD * (held ?? values).halfWidth),
    halfWidth: stated.halfWidthDb,
    ended: stated.meaning !== 'certificate',
    density: shapeOf(stated).density,
    lump: u,
    reach: CERTIFICATE_FACTOR * u,
    said: said === undefined ? undefined : { lump: said, reach: CERTIFICATE_FACTOR * said },
  };
}
