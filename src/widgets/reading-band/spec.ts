import type { AddressSpec, ChoiceSpec, NumberSpec, StateOf } from '../../address/field-spec.ts';
import { amountOf, withLinkAmount } from '../../sheet/amount.ts';
import type { Link, Sheet } from '../../sheet/sheet.ts';

/** Least and greatest amount that a rung may add, and the step, in dB. */
export const AMOUNT = { min: 0, max: 3, step: 0.01, decimals: 2 } as const;

/** What is shown beyond the strip. */
export interface Shown {
  readonly showLimits: boolean;
  readonly showCurve: boolean;
}

type Switch = ChoiceSpec<'on' | 'off'>;
type BandFields = Readonly<Record<string, NumberSpec>> & {
  readonly showLimits: Switch;
  readonly showCurve: Switch;
};

/** The field of one rung: its slider, its number field, its key in the address. */
export const amountField = ({ id, label, statement }: Link): NumberSpec => ({
  type: 'number',
  // Two letters tell the rungs of a prepared chain apart; a test holds every one of them to that.
  key: id.slice(0, 2),
  label,
  kind: 'halfWidthDb',
  ...AMOUNT,
  default: amountOf(statement),
});

const switchField = (key: string, label: string, on: boolean): Switch => ({
  type: 'choice',
  key,
  label,
  choices: { on: '1', off: '0' },
  default: on ? 'on' : 'off',
});

/** What an address says about a prepared chain: what each rung adds, and what is shown. */
export function bandSpec(prepared: Sheet, shown: Shown): AddressSpec {
  const rungs = Object.fromEntries(prepared.links.map((link) => [link.id, amountField(link)]));
  const switches = {
    showLimits: switchField('en', 'End marks', shown.showLimits),
    showCurve: switchField('cu', 'Curve', shown.showCurve),
  };
  return { version: 1, fields: { ...rungs, ...switches } };
}

/** The state of the widget as the address speaks of it. */
export function toAddressState(sheet: Sheet, shown: Shown): StateOf<BandFields> {
  const amounts = Object.fromEntries(sheet.links.map(({ id, statement }) => [id, amountOf(statement)]));
  const of = (on: boolean): 'on' | 'off' => (on ? 'on' : 'off');
  // Amounts and switches share one record in the address; the type knows them apart by name only.
  return {
    ...amounts,
    showLimits: of(shown.showLimits),
    showCurve: of(shown.showCurve),
  } as StateOf<BandFields>;
}

/** A prepared sheet with the amounts that an address gave, and what it shows. */
export function fromAddressState(
  prepared: Sheet,
  state: Readonly<Record<string, unknown>>,
): Shown & { sheet: Sheet } {
  const sheet = prepared.links.reduce((changed, { id }) => {
    const amount = state[id];
    return typeof amount === 'number' ? withLinkAmount(changed, id, amount) : changed;
  }, prepared);
  return { sheet, showLimits: state.showLimits === 'on', showCurve: state.showCurve === 'on' };
}
