import { levelDbm, levelToPower } from '#compute';
import type { LinkEntries, PointEntries } from '../../sheet/entries.ts';
import { powerIntervalText, powerText } from '../../text/power-text.ts';
import { dbText, levelText } from '../../text/quantity-text.ts';
import { isGood, readField } from '../../text/read/field.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import { LINK_SPECS } from '../read/link-spec.ts';
import { POINT_SPECS } from '../read/point-spec.ts';
import { linkStrings } from './link-strings.ts';
import { pointStrings as strings } from './point-strings.ts';

/** Decimals of a level that was typed as watts, and digits of a power that was typed as a level. */
const LEVEL_DECIMALS = 2;
const POWER_DIGITS = 3;

/** The number in a field, if there is one. */
function numberIn(text: string, spec: ReadSpec): number | undefined {
  const field = readField(text, spec);
  return isGood(field) ? field.value : undefined;
}

const watts = (level: number): number => levelToPower(levelDbm(level));
const shownLevel = (level: number): string =>
  levelText('shown', { levelDbm: level, decimals: LEVEL_DECIMALS });

/**
 * How a typed level was understood, in the other unit: `500 mW` is `= 26.99 dBm`, and `27 dBm` is `= 501 mW`. Undefined where the field
 * is none of a level, or cannot be used.
 */
export function readAs(text: string, spec: ReadSpec): string | undefined {
  const level = spec.kind === 'level' ? numberIn(text, spec) : undefined;
  if (level === undefined) return undefined;
  const typedWatts = /w\s*$/i.test(text);
  return strings.readAs(
    typedWatts ? shownLevel(level) : powerText('shown', { powerW: watts(level), digits: POWER_DIGITS }),
  );
}

/** The limits that a nominal level and its decibels come to, in dBm and watts; undefined as long as one of them cannot be used. */
export function limitsAs(point: PointEntries): string | undefined {
  const number = (key: 'nominal' | 'tolerance' | 'above' | 'below') => numberIn(point[key], POINT_SPECS[key]);
  const nominal = number('nominal');
  const even = point.specification === 'around';
  const [above, below] = even
    ? [number('tolerance'), number('tolerance')]
    : [number('above'), number('below')];
  if (nominal === undefined || above === undefined || below === undefined) return undefined;
  const [lower, upper] = [nominal - Math.abs(below), nominal + above];
  if (lower > upper) return undefined;
  return strings.limitsAre({
    lower: shownLevel(lower),
    upper: shownLevel(upper),
    powers: powerIntervalText('shown', { lowerW: watts(lower), upperW: watts(upper) }),
  });
}

/** What a negative loss is: `= a gain of 20.0 dB`; undefined for any other. */
export function gainAs({ loss }: Pick<LinkEntries, 'loss'>): string | undefined {
  const db = numberIn(loss, LINK_SPECS.loss);
  return db !== undefined && db < 0
    ? linkStrings.gain(dbText('shown', { db: -db, decimals: LEVEL_DECIMALS }))
    : undefined;
}
