import type { LimitTerm } from '#compute';
import type { StatedLink, TabledStatement } from '../../sheet/measurement.ts';
import type { LinkUnit } from '../../sheet/method.ts';
import { fewestDecimals } from '../../text/place.ts';
import { numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import { statementText } from '../../text/statement-text.ts';
import type { Style } from '../../text/style.ts';
import { textStrings as strings } from '../export/text-strings.ts';

/** Nobody states a link to more decimals than this. */
const MOST_DECIMALS = 4;

const number = (style: Style, value: number): string =>
  numberText(style, { value, decimals: fewestDecimals(value, MOST_DECIMALS) });
const percent = (style: Style, value: number): string =>
  percentText(style, { percent: value, decimals: fewestDecimals(value, MOST_DECIMALS) });

/** What was stated about a link, before any reading: `±0.5 dB, limits`, `1 % of reading + 2 steps of 0.01`, `SWR 1.5 on 1.2 ...`. */
export function statedText(style: Style, { stated, unit }: Pick<StatedLink, 'stated' | 'unit'>): string {
  if (stated.form === 'swr')
    return strings.swr({ source: number(style, stated.sourceSwr), load: number(style, stated.loadSwr) });
  if (stated.form === 'corrections') return tabledText(style, stated, unit);
  if (stated.form === 'terms') return termsText(style, stated.terms);
  return statementText(style, { statement: stated, unit });
}

function tabledText(style: Style, stated: TabledStatement, unit: LinkUnit): string {
  const { by, points, coverageFactor } = stated;
  const expanded = Math.max(...points.map((point) => point.expanded));
  const statement = { form: 'expanded', expanded, coverageFactor } as const;
  return strings.tabled[by](points.length, statementText(style, { statement, unit }));
}

const termsText = (style: Style, terms: readonly LimitTerm[]): string =>
  terms.map((term) => termText(style, term)).join(' + ');

function termText(style: Style, term: LimitTerm): string {
  switch (term.of) {
    case 'reading':
      return strings.terms.reading(percent(style, term.percent));
    case 'fullScale':
      return strings.terms.fullScale({
        percent: percent(style, term.percent),
        scale: number(style, term.fullScale),
      });
    case 'digits':
      return strings.terms.digits({ count: number(style, term.count), step: number(style, term.step) });
    case 'floor':
      return number(style, term.amount);
    case 'kelvin':
      return strings.terms.kelvin({
        terms: termsText(style, term.terms),
        temperature: celsius(style, term.temperature),
        range: `${number(style, term.range.lower)} to ${celsius(style, term.range.upper)}`,
      });
    case 'year':
      return strings.terms.year({ terms: termsText(style, term.terms), years: number(style, term.years) });
  }
}

const celsius = (style: Style, value: number): string =>
  quantityText(style, { value, decimals: fewestDecimals(value, 1), unit: 'degC' });
