import { signsOf } from './style.ts';
import { type UnitName, unitNames, unitText } from './units.ts';

/** Signs that stand before or between numbers, as they are said. */
const SIGNS: readonly (readonly [sign: RegExp, said: string])[] = [
  [/(\d) ?\/(?=[\u2212-]\d)/g, '$1, '],
  [/(\d) ?\/ ?(?=\d)/g, '$1 over '],
  [/\u00b1 ?/g, 'plus or minus '],
  [/[\u2212](?=\d)/g, 'minus '],
  [/(^|[^\p{L}\d])\+(?=\d)/gu, '$1plus '],
  [/[ \u00a0]?\u00d7[ \u00a0]?(?=\d)/g, ' times '],
  [/\u00d7/g, ' times'],
  [/\u2248[ \u00a0]?/g, 'about '],
  // no number of this site has it as its unit
  [/(\d)[ \u00a0]M\u03a9/g, '$1 megohm'],
];

/**
 * A text with numbers that was made to be seen, as it is said: `\u22127 dBm` is `minus 7 decibel-milliwatts`. For names of controls that
 * repeat what stands beside them; where the numbers are at hand, the spoken style says more.
 */
export function saidText(shown: string): string {
  const signed = SIGNS.reduce((text, [sign, said]) => text.replace(sign, said), shown);
  const symbols = new Map<string, UnitName>(
    unitNames()
      .map((unit) => [unitText('shown', unit, ''), unit] as const)
      .filter(([symbol]) => symbol !== ''),
  );
  const { space } = signsOf('shown');
  return signed
    .replace(
      /(\d+(?:\.\d+)?)[ \u00a0]([^\s\d,.;:()]+(?: (?:RMS|peak)\b)?)( pads?\b)?/gu,
      (whole, number: string, symbol: string, pad = '') => {
        const unit = symbols.get(symbol) ?? symbols.get(symbol.replace(/[ ]/g, space));
        return unit === undefined ? whole : `${number} ${unitText('spoken', unit, pad ? '1' : number)}${pad}`;
      },
    )
    .replaceAll(space, ' ');
}
