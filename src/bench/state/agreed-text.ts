import type { PointEntries, SheetEntries } from '../../sheet/entries.ts';
import { fewestDecimals } from '../../text/place.ts';
import { quantityText } from '../../text/quantity-text.ts';
import { isGood, readField } from '../../text/read/field.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import type { UnitName } from '../../text/units.ts';
import { MAY_BE_EMPTY, POINT_SPECS, type PointSpecKey, SPECIFICATION_KEYS } from '../read/point-spec.ts';
import { SHEET_SPECS } from '../read/spec.ts';
import { agreementStrings as strings } from './agreement-strings.ts';

/** Nobody agrees on more decimals than this. */
const DECIMALS = 4;

/** What a field says in one spelling: `27` and `27,0 dBm` agree; what cannot be read stands as typed. */
function said(text: string, spec: ReadSpec, unit: UnitName): string {
  const field = readField(text, spec);
  if (!isGood(field)) return text.trim();
  const value = Number(field.value.toFixed(DECIMALS));
  return quantityText('shown', { value, decimals: fewestDecimals(value, DECIMALS), unit });
}

/** The specification of a point in words, for comparing and for the log; that nothing is agreed where a number is missing. */
export function agreedSpecification(point: PointEntries): string {
  const needed = SPECIFICATION_KEYS[point.specification].filter(
    (key) => !MAY_BE_EMPTY[point.specification]?.includes(key),
  );
  return needed.some((key) => point[key].trim() === '') ? strings.nothing : specificationWords(point);
}

function specificationWords(point: PointEntries): string {
  const at = (key: PointSpecKey, unit: UnitName): string => said(point[key], POINT_SPECS[key], unit);
  switch (point.specification) {
    case 'around':
      return strings.around(at('nominal', 'dBm'), at('tolerance', 'dB'));
    case 'uneven':
      return strings.uneven(at('nominal', 'dBm'), at('above', 'dB'), at('below', 'dB').replace(/^−/, ''));
    case 'between':
      return strings.between(at('lowest', 'dBm'), at('highest', 'dBm'));
    case 'atMost':
      return strings.atMost(at('highest', 'dBm'));
    case 'atLeast':
      return strings.atLeast(at('lowest', 'dBm'));
    case 'licence':
      return strings.licence(at('highest', 'dBm'));
  }
}

/** The rule in words, for comparing and for the log. */
export function agreedRule(entries: SheetEntries): string {
  switch (entries.rule) {
    case 'simple':
      return strings.simple;
    case 'guardBand':
      return strings.guardBand(said(entries.multiplier, SHEET_SPECS.multiplier, 'none'));
    case 'probability':
      return strings.probability(said(entries.required, SHEET_SPECS.required, 'percent'));
  }
}
