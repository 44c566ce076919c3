import { constantsOf, type DefiningConstant, definingConstant, numberOfConstants, partsOf } from '#compute';
import { isTreeUnit, type TreeUnit } from '../../sheet/unit-tree.ts';
import { everyDigitText, groupedText, powerOfTenText, raisedText } from '../../text/power-of-ten-text.ts';
import { type BaseStyle, baseOf, type Style, signsOf } from '../../text/style.ts';
import { strings } from './strings.ts';

/** Digits of what is exact but never ends. */
const DIGITS = 8;
const TIMES: Readonly<Record<BaseStyle, string>> = {
  shown: '\u00a0',
  spoken: ' times ',
  ascii: ' ',
  unicode: ' ',
};
/** The order in which constants are written in a product. */
const ORDER: readonly DefiningConstant[] = [
  'planck',
  'elementaryCharge',
  'lightSpeed',
  'boltzmann',
  'caesiumFrequency',
];

type Factor = readonly [of: string, power: number];

function factorText(style: Style, [of, power]: Factor): string {
  const constant = Object.hasOwn(strings.constantNames, of)
    ? strings.constantNames[of as DefiningConstant]
    : undefined;
  const named = isTreeUnit(of) ? strings.unitNames[of] : constant;
  const { symbol, name } = named ?? { symbol: of, name: of };
  if (style === 'spoken')
    return power === 1
      ? name
      : power === 2
        ? `${name} squared`
        : `${name} to the ${power < 0 ? `minus ${-power}` : power}`;
  if (baseOf(style) === 'ascii') return power === 1 ? symbol : `${symbol}^${power}`;
  return `${symbol}${raisedText(power)}`;
}

/** A product of units and constants with their powers: `h Δν²`. */
const productText = (style: Style, factors: readonly Factor[]): string =>
  factors.map((factor) => factorText(style, factor)).join(TIMES[baseOf(style)]);

/** The constants that a unit comes down to, those above the line first: `h Δν e⁻¹`. */
export function constantsText(style: Style, unit: TreeUnit): string {
  const powers = constantsOf(unit);
  const factors = ORDER.flatMap((of): Factor[] => {
    const power = powers.get(of);
    return power === undefined ? [] : [[of, power]];
  });
  return productText(style, [
    ...factors.filter(([, power]) => power > 0),
    ...factors.filter(([, power]) => power < 0),
  ]);
}

/** So many of a unit as a number of the product of its constants: 1 W is `1.785 929 2 × 10¹³ h Δν²`. */
export function inConstants(
  style: Style,
  { unit, count = 1, digits = DIGITS }: { unit: TreeUnit; count?: number; digits?: number },
): string {
  const number = count * numberOfConstants(unit);
  const exact = Number.isInteger(number) && number < 1e12;
  const text = exact ? groupedText(style, String(number)) : powerOfTenText(style, { value: number, digits });
  return `${text}${TIMES[baseOf(style)]}${constantsText(style, unit)}`;
}

/** The number of a constant with every digit that it was given, in its SI unit: `6.626 070 15 × 10⁻³⁴ J s`. */
export function constantText(style: Style, constant: DefiningConstant): string {
  return `${numberOfConstant(style, constant)}${signsOf(style).space}${strings.constantNames[constant].unit}`;
}

const numberOfConstant = (style: Style, constant: DefiningConstant): string =>
  everyDigitText(style, definingConstant(constant));

/** What a unit is made of, one step down, with the number of a constant where one is named: `c s ÷ 299 792 458`. */
export function partsText(style: Style, unit: TreeUnit): string {
  const parts = partsOf(unit);
  const product = productText(
    style,
    parts.map(({ of, power }) => [of, power]),
  );
  const constant = parts.find((part) => !isTreeUnit(part.of));
  if (constant === undefined) return product;
  const number = numberOfConstant(style, constant.of as DefiningConstant);
  const space = TIMES[baseOf(style)];
  if (constant.power < 0) return `${number}${space}${product}`;
  const divided =
    style === 'spoken' ? ' divided by ' : baseOf(style) === 'ascii' ? ' / ' : `${space}÷${space}`;
  return `${product}${divided}${/[×e]/.test(number) ? `(${number})` : number}`;
}
