import {
  levelDbm,
  levelToPower,
  mean,
  mismatchCorrection,
  mismatchLimits,
  type PowerDelivery,
  reflectionOfSwr,
  sumOfTerms,
} from '#compute';
import { powerInLine } from './levels.ts';
import type { StatedLink } from './measurement.ts';
import type { LinkUnit, MethodReading } from './method.ts';
import { correctedLink } from './resolve-corrections.ts';
import type { Link } from './sheet.ts';

/** What a sum of terms is stated of, and how its half-width becomes one that the method understands. */
interface TermsAt {
  /** The reading in the unit that the terms are in: W, V peak to peak, V DC. */
  readonly reading: number;
  readonly unit: LinkUnit;
  /** From the terms' unit to the link's. */
  readonly per: number;
}

function termsAt({ setup, columns }: MethodReading, delivery: PowerDelivery): TermsAt {
  const reading = mean(columns.readings);
  switch (setup.method) {
    case 'padsIntoMeter': {
      const watts = levelToPower(levelDbm(reading));
      return { reading: watts, unit: 'percentOfPower', per: 100 / watts };
    }
    case 'oscilloscope':
      return { reading, unit: 'voltsPeakToPeak', per: 1 };
    case 'peakDetector':
      return { reading, unit: 'volts', per: 1 };
    case 'inLine':
      return { reading, unit: 'percentOfPower', per: 100 / powerInLine(reading, columns, delivery) };
    case 'dcSubstitution':
      return { reading: mean(columns.volts), unit: 'dcVolts', per: 1 };
  }
}

/**
 * A link as it is at one point: a table of corrections becomes the one that holds there, a sum of terms plain limits at the reading,
 * standing-wave ratios become the mismatch of the power that is meant (into an ideal load: unknown phase; delivered or net: a known loss; incident: nothing).
 * @throws RangeError as the sums behind it.
 */
export function resolvedLink(link: StatedLink, reading: MethodReading, delivery: PowerDelivery): Link {
  const { stated, off: _, assumed: __, ...rest } = link;
  if (stated.form === 'terms') {
    const at = termsAt(reading, delivery);
    const { halfWidth } = sumOfTerms({ reading: at.reading, terms: stated.terms });
    const statement = { form: 'limits', shape: 'rectangular', halfWidth: halfWidth * at.per } as const;
    return { ...rest, statement, unit: at.unit };
  }
  if (stated.form === 'corrections') return correctedLink({ ...rest, stated }, reading, delivery);
  if (stated.form !== 'swr') return { ...rest, statement: stated };
  const source = reflectionOfSwr(stated.sourceSwr);
  const load = reflectionOfSwr(stated.loadSwr);
  if (delivery !== 'intoIdeal') {
    const correction = mismatchCorrection({ delivery, source, load });
    return { ...rest, unit: 'dB', statement: { form: 'asymmetric', ...correction } };
  }
  const { lower, upper } = mismatchLimits({ source, load });
  const halfWidth = (upper - lower) / 2;
  return {
    ...rest,
    unit: 'dB',
    statement: { form: 'limits', shape: 'arcsine', halfWidth },
    reflections: { source, load },
  };
}
