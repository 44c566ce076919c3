import { caesiumPeriods, lightTimeS } from '#compute';
import { type Banded, directCurrent } from '../../sheet/counted-charges.ts';
import type { TreeUnit } from '../../sheet/unit-tree.ts';
import { groupedText } from '../../text/power-of-ten-text.ts';
import { quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { levelOf, type TreeState } from './spec.ts';
import { strings } from './strings.ts';
import { amountText, bandedText } from './words.ts';

const NANO = 1e-9;

/** What the reader's own level is in a unit; for a metre and a second, what they are counted by. */
export function ownText(style: Style, state: TreeState, unit: TreeUnit): string {
  const { powerW, volts, amperes } = directCurrent(levelOf(state));
  const { joule, newton, kilogram, metre, second } = strings.ownWords;
  const of = (amount: Banded, name: 'J' | 'N' | 'kg'): string => bandedText(style, amount, name);
  switch (unit) {
    case 'watt':
      return amountText(style, powerW, 'W');
    case 'volt':
      return bandedText(style, volts, 'V');
    case 'ampere':
      return amountText(style, amperes, 'A');
    case 'ohm':
      return quantityText(style, { value: state.load, decimals: 1, unit: 'ohm' });
    case 'joule':
      return joule(of(powerW, 'J'));
    case 'newton':
      return newton(of(powerW, 'N'));
    case 'kilogram':
      return kilogram(of(powerW, 'kg'));
    case 'metre':
      return metre(quantityText(style, { value: lightTimeS(1) / NANO, decimals: 3, unit: 'ns' }));
    case 'second':
      return second(groupedText(style, String(caesiumPeriods(1))));
  }
}
