import type { Specification } from '#compute';
import { fewestDecimals } from '../../text/place.ts';
import { levelText } from '../../text/quantity-text.ts';
import { tidy } from '../entries/typed.ts';
import { pointPath } from '../form/keys.ts';
import { strings } from '../strings.ts';
import { type PointContext, pointFieldLabel } from './point-context.ts';
import { POINT_SPECS, type PointSpecKey } from './point-spec.ts';
import { problemStrings } from './problem-strings.ts';

/** The numbers of a specification by their key, and where something is told of them. */
interface SpecificationReader {
  readonly number: (key: PointSpecKey) => number;
  readonly optional: (key: PointSpecKey) => number | undefined;
  readonly tell: (key: PointSpecKey, problem: string) => void;
  /** Whether nothing was told since the reader was made. */
  readonly clean: () => boolean;
}

function readerOf(context: PointContext): SpecificationReader {
  const { entries, collect } = context;
  const at = (key: PointSpecKey) => ({
    path: pointPath(entries.id, key),
    label: pointFieldLabel(context, strings.point.labels[key]),
  });
  const field = (key: PointSpecKey) => ({ ...at(key), text: entries[key], spec: POINT_SPECS[key] });
  const before = collect.problems.length;
  return {
    number: (key) => collect.number(field(key)),
    optional: (key) => collect.optional(field(key)),
    tell: (key, problem) => collect.add({ ...at(key), problem }),
    clean: () => collect.problems.length === before,
  };
}

/** Limits in dBm, from whichever way they were stated. */
export function readSpecification(context: PointContext): Specification {
  const reader = readerOf(context);
  switch (context.entries.specification) {
    case 'around':
      return around(reader);
    case 'uneven':
      return uneven(reader);
    case 'between':
      return between(reader);
    case 'atMost':
    case 'licence':
      return { upper: reader.number('highest') };
    case 'atLeast':
      return { lower: reader.number('lowest') };
  }
}

function around({ number }: SpecificationReader): Specification {
  const [nominal, tolerance] = [number('nominal'), number('tolerance')];
  return { lower: tidy(nominal - tolerance), upper: tidy(nominal + tolerance) };
}

/** "+1/-2 dB": below, a minus is natural and changes nothing; above it contradicts the nominal level. */
function uneven({ number, tell, clean }: SpecificationReader): Specification {
  const [nominal, above, below] = [number('nominal'), number('above'), Math.abs(number('below'))];
  if (clean() && above < 0) tell('above', problemStrings.aboveIsBelow);
  if (clean() && above === 0 && below === 0) tell('above', problemStrings.noWidth);
  return { lower: tidy(nominal - below), upper: tidy(nominal + above) };
}

/** A nominal level need not be given; one that is must lie between the limits. */
function between({ number, optional, tell, clean }: SpecificationReader): Specification {
  const limits = { lower: number('lowest'), upper: number('highest') };
  const nominal = optional('nominal');
  if (!clean()) return limits;
  if (limits.lower >= limits.upper) tell('highest', problemStrings.limitsSwapped);
  else if (nominal !== undefined && nominal > limits.upper)
    tell('highest', problemStrings.aboveLimit(shown(nominal)));
  else if (nominal !== undefined && nominal < limits.lower)
    tell('lowest', problemStrings.belowLimit(shown(nominal)));
  return limits;
}

/** Decimals of a level in a sentence. */
const LEVEL_DECIMALS = 2;

/** A level to the decimals of a hundredth at most: 500 mW is 26.99 dBm. */
function shown(levelDbm: number): string {
  return levelText('shown', { levelDbm, decimals: fewestDecimals(levelDbm, LEVEL_DECIMALS) });
}
