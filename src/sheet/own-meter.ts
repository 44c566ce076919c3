import {
  type BandResult,
  componentOf,
  type Judgement,
  judge,
  readCorrectionTable,
  type TabledCorrection,
} from '#compute';
import { bandOf } from './band.ts';
import { limits } from './link.ts';

/** What somebody does with the certificate: nothing, add the correction, or turn the screw instead. */
export const TREATMENTS = ['asRead', 'corrected', 'adjusted'] as const;
export type Treatment = (typeof TREATMENTS)[number];

/** A reading of a meter that was calibrated some time ago. */
export interface MeterUse {
  readonly readingDbm: number;
  readonly months: number;
  readonly treatment: Treatment;
  /** Maximum permissible error that the meter is verified against, in dB. */
  readonly permissibleDb: number;
}

/** The table of the certificate, k = 2; level by level what is to be added to the reading. Invented, as is all of this. */
export const certificate = (): readonly TabledCorrection[] => [
  { at: -20, correction: 0.36, expanded: 0.1 },
  { at: -10, correction: 0.2, expanded: 0.08 },
  { at: 0, correction: 0.05, expanded: 0.08 },
  { at: 10, correction: -0.1, expanded: 0.08 },
];

/** The level at which somebody turns the screw until the reading is right, in dBm. */
export const ADJUSTED_AT_DBM = 0;
/** What the maker says that the meter drifts in a year at most, in dB. */
const DRIFT_DB_PER_YEAR = 0.1;
/** One step of the display, in dB. */
const DISPLAY_STEP_DB = 0.1;

/** The club's own meter at its usual reading, half a year after its calibration. */
export const clubMeter = (): MeterUse => ({
  readingDbm: -13,
  months: 6,
  treatment: 'asRead',
  permissibleDb: 0.4,
});

/** The correction that the table gives for a reading, in dB. @throws RangeError beyond the ends of the table. */
export const correctionAt = (readingDbm: number): number =>
  readCorrectionTable({ points: certificate(), at: readingDbm }).correction;

/**
 * How far off what is said would be, by the certificate: reading less reference where the reading stands as it is, nothing where
 * the correction was added, and what the screw left where it was turned: it moves every reading alike.
 */
export function errorDb({ readingDbm, treatment }: MeterUse): number {
  if (treatment === 'corrected') return 0;
  const asFound = -correctionAt(readingDbm);
  return treatment === 'asRead' ? asFound : asFound + correctionAt(ADJUSTED_AT_DBM);
}

/**
 * How sure the meter's error is: certificate, drift since, and the step of the display. Undefined after an adjustment: the table was
 * made before it, and nobody has compared the meter since.
 */
export function knownTo({ readingDbm, months, treatment }: MeterUse): BandResult | undefined {
  if (treatment === 'adjusted') return undefined;
  const { expanded } = readCorrectionTable({ points: certificate(), at: readingDbm });
  const inputs = [
    componentOf({
      id: 'certificate',
      statement: { form: 'expanded', expanded, coverageFactor: 2 },
      unit: 'dB',
    }),
    componentOf({ id: 'drift', statement: limits((DRIFT_DB_PER_YEAR * months) / 12), unit: 'dB' }),
    componentOf({ id: 'display', statement: { form: 'displayStep', step: DISPLAY_STEP_DB }, unit: 'dB' }),
  ];
  return bandOf({ kind: 'sum', constant: 0, inputs, sensitivities: [1, 1, 1] });
}

/**
 * Does the meter keep to its maximum permissible error at this reading? Asked of what it shows, whatever is done with the reading
 * afterwards. Undefined after an adjustment, until it is calibrated again.
 */
export function verified(use: MeterUse): Judgement | undefined {
  const found = knownTo(use);
  if (found === undefined) return undefined;
  const estimate = errorDb({ ...use, treatment: 'asRead' });
  const { expanded } = found.propagation;
  const interval = { lower: estimate - expanded, upper: estimate + expanded };
  return judge({
    // Only propagation is asked to decide; the whole distribution would not be looked at.
    result: {
      ...found,
      estimate,
      propagation: { ...found.propagation, interval },
      whole: { unavailable: 'not-a-sum' },
    },
    specification: { lower: -use.permissibleDb, upper: use.permissibleDb },
    rule: { kind: 'guardBand', multiplier: 1 },
    decidingInterval: 'propagation',
  });
}
