import type { SheetTextKey } from '../sheet/entries.ts';
import { levelText } from '../text/quantity-text.ts';
import { readColumn } from '../text/read/column.ts';
import { isGood, readField } from '../text/read/field.ts';
import type { ReadSpec } from '../text/read/quantity.ts';
import { SHEET_SPECS } from './spec.ts';
import { strings } from './strings.ts';

/** Decimals of a level that was typed as watts. */
const LEVEL_DECIMALS = 2;

const isSpecKey = (key: SheetTextKey): key is keyof typeof SHEET_SPECS => Object.hasOwn(SHEET_SPECS, key);

/** How a level typed in watts was understood: `= 23.01 dBm`. Undefined where the field says it itself, or says nothing. */
export function readAs(key: SheetTextKey, text: string): string | undefined {
  if (key === 'readings') return readingsAs(text);
  const spec: ReadSpec | undefined = isSpecKey(key) ? SHEET_SPECS[key] : undefined;
  if (spec?.kind !== 'level' || !/w\s*$/i.test(text)) return undefined;
  const field = readField(text, spec);
  return isGood(field) ? strings.readAs(shown(field.value)) : undefined;
}

const shown = (levelDbm: number): string => levelText('shown', { levelDbm, decimals: LEVEL_DECIMALS });

/** How many readings were found in a column, with their mean; for one in watts its level. */
function readingsAs(text: string): string | undefined {
  const { values, problems } = readColumn(text, SHEET_SPECS.readings);
  const [first] = values;
  if (problems.length > 0 || first === undefined) return undefined;
  if (values.length === 1) return /w\s*$/i.test(text) ? strings.readAs(shown(first.value)) : undefined;
  const mean = values.reduce((sum, { value }) => sum + value, 0) / values.length;
  return strings.meanOf(values.length, shown(mean));
}
