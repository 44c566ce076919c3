import type { DrawnNode } from '../../figures/unit-tree.layout.ts';
import { type Banded, directCurrent } from '../../sheet/counted-charges.ts';
import {
  cancelled,
  everythingIn,
  isTreeUnit,
  nodesOf,
  type RootUnit,
  type UnitNode,
  unitTree,
} from '../../sheet/unit-tree.ts';
import { aloud } from '../../text/aloud.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerOfTenText, raisedText, tenText } from '../../text/power-of-ten-text.ts';
import { powerText } from '../../text/power-text.ts';
import { numberText, quantityText } from '../../text/quantity-text.ts';
import { baseOf, type Style } from '../../text/style.ts';
import type { UnitName } from '../../text/units.ts';
import type { Answer } from '../parts/answer.ts';
import { inConstants } from './product.ts';
import { levelOf, type TreeState } from './spec.ts';
import { strings } from './strings.ts';

/** Digits of a number whose level is claimed to be exact. */
const CLAIMED_DIGITS = 10;

/** The tree as far as it is unfolded. */
export const treeOf = (state: TreeState): UnitNode => unitTree(state.root, (unit) => state[unit] === 'open');

/** The tree with its letters; on the wall units have their symbols alone. */
export function drawnTree(state: TreeState, names: 'full' | 'short'): DrawnNode {
  const drawn = ({ path, of, power, kind, parts }: UnitNode): DrawnNode => {
    const unit = isTreeUnit(of) ? of : undefined;
    const constant = isTreeUnit(of) ? undefined : strings.constantNames[of];
    const { symbol, name } = unit ? strings.unitNames[unit] : (constant ?? { symbol: '', name: '' });
    const short = constant?.short ?? '';
    return {
      path,
      ...(unit && kind !== 'again' && { unit }),
      kind,
      symbol: `${symbol}${raisedText(power)}`,
      name: names === 'full' ? name : short,
      parts: parts.map(drawn),
    };
  };
  return drawn(treeOf(state));
}

/** A number with the ends of its band, as many digits as that bears: `501 mW, 428 to 587`, `6.25 (5.77 to 6.77) × 10¹⁷`. */
export function bandedText(style: Style, { value, lower, upper }: Banded, unit: UnitName = 'none'): string {
  if (lower === upper)
    return unit === 'none'
      ? powerOfTenText(style, { value, digits: CLAIMED_DIGITS })
      : quantityText(style, { value, decimals: decimalsFor(value * 1e-8), unit });
  const exponent = unit === 'none' ? Math.floor(Math.log10(value)) : 0;
  const scale = 10 ** exponent;
  const decimals = decimalsFor((upper - lower) / 2 / scale);
  const end = (at: number): string => numberText(style, { value: at / scale, decimals });
  const ends = { lower: end(lower), upper: end(upper) };
  if (unit === 'none')
    return tenText(style, { mantissa: strings.within({ text: end(value), ...ends }), exponent });
  return strings.ends({ text: quantityText(style, { value, decimals, unit }), ...ends });
}

const scaled = ({ value, lower, upper }: Banded, by: number): Banded => ({
  value: by * value,
  lower: by * lower,
  upper: by * upper,
});

/** Watts or amperes, in thousandths where there is less than one. */
export function amountText(style: Style, amount: Banded, unit: 'W' | 'A'): string {
  return amount.value < 1
    ? bandedText(style, scaled(amount, 1000), unit === 'W' ? 'mW' : 'mA')
    : bandedText(style, amount, unit);
}

/** The reader's own amount of a root unit, and the number in that unit. */
function ownOf(style: Style, state: TreeState): { text: string; count: number } {
  const { powerW, volts, amperes } = directCurrent(levelOf(state));
  switch (state.root) {
    case 'watt':
      return { text: amountText(style, powerW, 'W'), count: powerW.value };
    case 'volt':
      return { text: bandedText(style, volts, 'V'), count: volts.value };
    case 'ampere':
      return { text: amountText(style, amperes, 'A'), count: amperes.value };
    case 'ohm':
      return {
        text: quantityText(style, { value: state.load, decimals: 1, unit: 'ohm' }),
        count: state.load,
      };
  }
}

function rootWords(root: RootUnit): string {
  const gone = cancelled(root).map((constant) => {
    const { symbol, name } = strings.constantNames[constant];
    return `the ${name} ${symbol}`;
  });
  const { kept, gone: one, goneTwo: two } = strings.rootWords;
  if (gone.length === 0) return kept;
  return gone.length === 1 ? one(gone.join('')) : two(gone.join(strings.and));
}

/** The root in constants, the reader's own amount of it, and the charges that are counted. */
export function answersOf(state: TreeState, style: Style = 'shown'): readonly [Answer, Answer, Answer] {
  const { root, counted, half } = state;
  const own = ownOf(style, state);
  const { charges, countedW } = directCurrent(levelOf(state));
  const { heating, crest } = strings.chargesWords;
  const words = counted === 'crest' ? crest(powerText(style, { powerW: countedW, digits: 3 })) : heating;
  return [
    {
      figure: rootText(style, root),
      words: rootWords(root),
    },
    {
      figure: own.text,
      words: strings.own[root](inConstants(style, { unit: root, count: own.count, digits: 3 })),
    },
    {
      figure: strings.charges(bandedText(style, charges)),
      words: `${words}.${half === 0 ? strings.claimed : ''}`,
    },
  ];
}

/** A root in constants. None of their numbers ends after so few digits, so the sign says that it is rounded. */
export function rootText(style: Style, root: RootUnit): string {
  const { symbol, name } = strings.unitNames[root];
  const spoken = style === 'spoken';
  return strings.root({
    one: spoken ? name : symbol,
    equals: spoken ? strings.about : baseOf(style) === 'ascii' ? '=' : '≈',
    constants: inConstants(style, { unit: root }),
  });
}

/** How many units can be seen unfolded. */
export const unfoldedCount = (state: TreeState): number =>
  nodesOf(treeOf(state)).filter(({ kind }) => kind === 'open').length;

const unfoldedText = (state: TreeState): string =>
  strings.unfolded({ open: unfoldedCount(state), all: everythingIn(state.root).units.length });

/** The settled state in one spoken sentence. */
export const summarise = (state: TreeState): string =>
  aloud([...answersOf(state, 'spoken').map(({ figure }) => figure), unfoldedText(state)]);
