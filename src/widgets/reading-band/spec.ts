import type {
  AddressSpec,
  ChoiceSpec,
  ListSpec,
  NumberSpec,
  StateOf,
  TextSpec,
} from '../../address/field-spec.ts';
import { amountOf, withLinkAmount } from '../../sheet/amount.ts';
import type { Link, Sheet } from '../../sheet/sheet.ts';
import { AMOUNT, rangeOf } from './amount.ts';
import { isOwn, LONGEST_NAME, MOST_OWN, type OwnForm, type OwnRung, withOwn } from './own-rungs.ts';

/** What is shown beyond the strip. */
export interface Shown {
  readonly showLimits: boolean;
  readonly showCurve: boolean;
}

type Switch = ChoiceSpec<'on' | 'off'>;
type OwnList = ListSpec<{
  readonly name: TextSpec;
  readonly form: ChoiceSpec<OwnForm>;
  readonly amount: NumberSpec;
}>;
type BandFields = Readonly<Record<string, NumberSpec | OwnList | TextSpec | Switch>> & {
  readonly own: OwnList;
  readonly out: TextSpec;
  readonly showLimits: Switch;
  readonly showCurve: Switch;
};

/** Two letters tell the rungs of a prepared chain apart; a test holds every one of them to that. */
const keyOf = ({ id }: Pick<Link, 'id'>): string => id.slice(0, 2);

/** The field of one rung: its slider, its number field, its key in the address. */
const amountField = ({ id, label, statement, unit }: Link): NumberSpec => ({
  type: 'number',
  key: keyOf({ id }),
  label,
  kind: rangeOf({ unit }).kind,
  ...rangeOf({ unit }).range,
  default: amountOf(statement),
});

const switchField = (key: string, label: string, on: boolean): Switch => ({
  type: 'choice',
  key,
  label,
  choices: { on: '1', off: '0' },
  default: on ? 'on' : 'off',
});

/** Rungs of the reader's own, next to the transmitter. */
const ownField = (): OwnList => ({
  type: 'list',
  key: 'r',
  label: 'Rungs of your own',
  maxLength: MOST_OWN,
  default: [],
  of: {
    name: { type: 'text', key: 'n', label: 'Name', maxLength: LONGEST_NAME, default: '' },
    form: {
      type: 'choice',
      key: 'f',
      label: 'Stated as',
      choices: { limits: 'l', expanded: 'u' },
      default: 'limits',
    },
    amount: { type: 'number', key: 'a', label: 'It adds', kind: 'halfWidthDb', ...AMOUNT, default: 0 },
  },
});

/** Prepared rungs that the reader has taken out, by their keys with spaces between. */
const outField = ({ links }: Sheet): TextSpec => ({
  type: 'text',
  key: 'o',
  label: 'Rungs taken out',
  maxLength: 3 * links.length,
  default: '',
});

/** What an address says about a prepared chain: what each rung adds, which were added or taken out, and what is shown. */
export function bandSpec(prepared: Sheet, shown: Shown): AddressSpec {
  const rungs = Object.fromEntries(prepared.links.map((link) => [link.id, amountField(link)]));
  const switches = {
    showLimits: switchField('en', 'End marks', shown.showLimits),
    showCurve: switchField('cu', 'Curve', shown.showCurve),
  };
  return { version: 1, fields: { ...rungs, ...switches, own: ownField(), out: outField(prepared) } };
}

/** The state of the widget as the address speaks of it, beside the prepared chain that it came from. */
export function toAddressState(prepared: Sheet, sheet: Sheet, shown: Shown): StateOf<BandFields> {
  const amounts = Object.fromEntries(
    prepared.links.map((link) => [link.id, amountOf((linkIn(sheet, link) ?? link).statement)]),
  );
  const of = (on: boolean): 'on' | 'off' => (on ? 'on' : 'off');
  const out = prepared.links.filter((link) => linkIn(sheet, link) === undefined).map(keyOf);
  // Amounts and the rest share one record in the address; the type knows them apart by name only.
  return {
    ...amounts,
    own: sheet.links.filter(isOwn).map(ownRung),
    out: out.join(' '),
    showLimits: of(shown.showLimits),
    showCurve: of(shown.showCurve),
  } as StateOf<BandFields>;
}

const linkIn = ({ links }: Sheet, { id }: Link): Link | undefined => links.find((link) => link.id === id);

const ownRung = ({ label, statement }: Link): OwnRung => ({
  name: label,
  form: statement.form === 'expanded' ? 'expanded' : 'limits',
  amount: amountOf(statement),
});

/** A prepared sheet with what an address said of it, and what it shows. */
export function fromAddressState(
  prepared: Sheet,
  state: Readonly<Record<string, unknown>>,
): Shown & { sheet: Sheet } {
  const set = prepared.links.reduce((changed, { id }) => {
    const amount = state[id];
    return typeof amount === 'number' ? withLinkAmount(changed, id, amount) : changed;
  }, prepared);
  const out = typeof state.out === 'string' ? state.out.split(' ') : [];
  const kept = { ...set, links: set.links.filter((link) => !out.includes(keyOf(link))) };
  // A list that was decoded holds whole records of its specification.
  const own = Array.isArray(state.own) ? (state.own as readonly OwnRung[]) : [];
  return {
    sheet: own.length > 0 ? withOwn(kept, own) : kept,
    showLimits: state.showLimits === 'on',
    showCurve: state.showCurve === 'on',
  };
}
