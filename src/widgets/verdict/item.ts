import type { UnitName } from '../../text/units.ts';
import { type Item, type VerdictFields, type VerdictState, verdictSpec } from './spec.ts';

type Name = keyof VerdictFields & string;

/** How one kind of thing is shown. */
export interface ItemForm {
  /** The field that the knob in the figure moves; its limits are the ends of the axis. */
  readonly reading: 'reading' | 'diode' | 'container' | 'resistor';
  readonly unit: UnitName;
  /** Decimals of its values in sentences. */
  readonly decimals: number;
  /** Fields of its own, in the order in which they are shown. */
  readonly show: readonly Name[];
}

const FORMS: Readonly<Record<Item, ItemForm>> = {
  transmitter: {
    reading: 'reading',
    unit: 'dBm',
    decimals: 2,
    show: ['reading', 'expanded', 'lower', 'upper', 'spread'],
  },
  diode: { reading: 'diode', unit: 'V', decimals: 3, show: ['diode', 'diodeU'] },
  container: { reading: 'container', unit: 'none', decimals: 1, show: ['container', 'containerU'] },
  resistors: {
    reading: 'resistor',
    unit: 'ohm',
    decimals: 2,
    show: ['resistor', 'resistorU', 'resistorSpread'],
  },
};

export const formOf = (item: Item): ItemForm => FORMS[item];

/** Names of the fields that a state shows: the rule with the one number that it has, and those of what is measured. */
export function shownFields({ item, rule }: VerdictState): readonly Name[] {
  const ruled: readonly Name[] =
    rule === 'guardBand' ? ['multiplier'] : rule === 'probability' ? ['required'] : [];
  const { reading, show } = formOf(item);
  return [reading, 'rule', ...ruled, ...show.filter((name) => name !== reading), 'item'];
}

/** Ends of the axis. */
export function domainOf(item: Item): { readonly lower: number; readonly upper: number } {
  const { min, max } = verdictSpec.fields[formOf(item).reading];
  return { lower: min, upper: max };
}
