import { type EnvelopeProps, envelopeSpan } from '../../figures/envelope.layout.ts';
import type { ShareRow } from '../../figures/power-shares.layout.ts';
import { meanOf, powerOfKind, powersAt, supplyShares } from '../../sheet/keyed.ts';
import type { Style } from '../../text/style.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type KeyedFields, type KeyedState, keyedOf } from './spec.ts';
import { strings } from './strings.ts';
import { share, slippedPower, watts } from './words.ts';

/** The figure's data of a state; its axis stays while the handle is held. */
export function figureOf({ values, before, held }: FieldsState<KeyedFields>): Omit<EnvelopeProps, 'frame'> {
  const ground = held ?? values;
  const ghost = before && before.keying === values.keying ? before.peak : undefined;
  return {
    envelope: values.keying === 'keyDown' ? 'steadyCarrier' : values.keying,
    peakW: values.peak,
    meanW: meanOf(keyedOf(values)),
    carrierW: powerOfKind(keyedOf(values), 'carrier'),
    beforeW: ghost,
    spanW: envelopeSpan([ground.peak, slippedPower(ground) ?? 0, held ? 0 : (ghost ?? 0)]),
    slippedW: slippedPower(values),
  };
}

/** Which line of the figure is the power that is meant. */
export const meantMark = ({ kind }: KeyedState): 'peak' | 'carrier' | 'mean' =>
  kind === 'peakEnvelope' ? 'peak' : kind;

/** What goes in and what comes out: from the supply, and at the plane that is meant. */
export function shareRows(state: KeyedState, style: Style = 'shown'): readonly ShareRow[] {
  const { shares } = strings;
  const supply = supplyShares(keyedOf(state));
  const power = powerOfKind(keyedOf(state), state.kind) ?? meanOf(keyedOf(state));
  const wave = powersAt(state.plane, { ...keyedOf(state), power });
  const atPlane: ShareRow = {
    id: 'plane',
    label: shares.load({ power: watts(style, wave.incident), place: shares.places[state.plane] }),
    first: {
      powerW: wave.delivered,
      label: shares.stays({
        power: watts(style, wave.delivered),
        share: share(style, wave.delivered / wave.incident),
      }),
    },
    second: { powerW: wave.reflected, label: shares.back(watts(style, wave.reflected)) },
  };
  if (supply === undefined) return [atPlane];
  const { input, output, heat, efficiency } = supply;
  const fromSupply: ShareRow = {
    id: 'supply',
    label: shares.supply(watts(style, input)),
    first: {
      powerW: output,
      label: shares.out({ power: watts(style, output), share: share(style, efficiency) }),
    },
    second: { powerW: heat, label: shares.heat(watts(style, heat)) },
  };
  return [fromSupply, atPlane];
}
