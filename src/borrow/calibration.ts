import {
  type Agreement,
  type CorrectionFound,
  type CorrectionLine,
  componentOf,
  correctedReading,
  correctionLine,
  correctionOf,
  mean,
  normalisedError,
  type Propagation,
  pooledScatter,
  propagate,
  readCorrection,
  type Scatter,
  type SumModel,
  TRANSFER_IDS,
  transferModel,
} from '#compute';
import { COVERAGE_FACTOR, COVERAGE_PROBABILITY } from '../sheet/coverage.ts';
import type { CheckedAlternation, CheckedPlace } from './checked.ts';
import { IDS, limits } from './inputs.ts';
import { lenderInput, sharedInputs } from './lender.ts';

/** A value with what makes it uncertain. */
export interface Found {
  readonly value: number;
  readonly propagation: Propagation;
}

/** What the readings of one place say by themselves. */
export interface PlaceFound extends Found {
  readonly id: string;
  readonly at: number;
  /** Correction of each round. */
  readonly rounds: readonly number[];
  readonly correction: CorrectionFound;
  readonly ownMean: number;
  readonly referenceMean: number;
  /** Standard uncertainty of what is this place's own: what the others share is left out. */
  readonly ownUncertainty: number;
  /** One's own reading, within what its data sheet claims, against the reference. */
  readonly agreement: Agreement | undefined;
}

/** A calibration by readings in turn. */
export interface Calibration {
  readonly checked: CheckedAlternation;
  readonly places: readonly PlaceFound[];
  /** Through the places, where there are several. */
  readonly line: CorrectionLine | undefined;
  /** Scatter of one round, of all places together; undefined for one round without anything known from earlier. */
  readonly scatter: Scatter;
  /** The later reading, corrected. */
  readonly later: Found | undefined;
}

/** A calibration that lacks something which no single field shows. */
export type CalibrationFault = 'noScatter' | 'nothingOwn';

const OWN: readonly string[] = [TRANSFER_IDS.scatter, TRANSFER_IDS.drift, IDS.resolution];

export const found = (model: SumModel): Found => ({
  value: model.constant,
  propagation: propagate({ model, coverageProbability: COVERAGE_PROBABILITY }),
});

/** Scatter of one round: of every place that has two or more, and what was known from earlier. */
function scatterOf({ places, earlier }: CheckedAlternation): Scatter | undefined {
  const series = places.flatMap(({ rounds }): Scatter[] => {
    const { standardDeviation, rounds: count } = correctionOf(rounds);
    return standardDeviation === undefined ? [] : [{ standardDeviation, degreesOfFreedom: count - 1 }];
  });
  const all = [...(earlier ? [earlier] : []), ...series];
  return all.length === 0 ? undefined : pooledScatter(all);
}

const transferAt = (checked: CheckedAlternation, { rounds }: CheckedPlace, pooled: Scatter): SumModel =>
  transferModel({
    found: correctionOf(rounds),
    lender: lenderInput(checked.lender),
    parts: [...limits(IDS.resolution, checked.influences.resolution), ...sharedInputs(checked)],
    pooled,
  });

function placeFound(checked: CheckedAlternation, place: CheckedPlace, pooled: Scatter): PlaceFound {
  const result = found(transferAt(checked, place, pooled));
  const { rounds } = place;
  const ownMean = mean(rounds.map(({ own }) => own));
  const referenceMean = ownMean + result.value;
  const own = result.propagation.budget.filter(({ id }) => OWN.includes(id));
  return {
    ...result,
    id: place.id,
    at: place.at,
    rounds: rounds.map((round) => correctionOf([round]).correction),
    correction: correctionOf(rounds),
    ownMean,
    referenceMean,
    ownUncertainty: Math.hypot(...own.map(({ contribution }) => contribution)),
    agreement:
      checked.claimed === undefined
        ? undefined
        : normalisedError({
            result: { value: ownMean, expanded: (COVERAGE_FACTOR * checked.claimed) / Math.sqrt(3) },
            reference: { value: referenceMean, expanded: result.propagation.expanded },
          }),
  };
}

/** The correction at a level or frequency, as a sum: of the only place, or read from the line between its ends. */
export function correctionAt(
  { checked, places, line, scatter }: Omit<Calibration, 'later'>,
  at: number,
): SumModel {
  const common = [lenderInput(checked.lender), ...sharedInputs(checked)];
  if (line) return readCorrection({ line, at, common });
  const only = checked.places.find(({ id }) => id === places[0]?.id);
  if (only === undefined) throw new RangeError('correctionAt: there must be 1 or more places, got 0');
  return transferAt(checked, only, scatter);
}

function laterFound(calibration: Omit<Calibration, 'later'>): Found | undefined {
  const { later, influences } = calibration.checked;
  if (later === undefined) return undefined;
  const { standardDeviation, degreesOfFreedom } = calibration.scatter;
  const scatter = componentOf({
    id: IDS.laterScatter,
    unit: 'dB',
    statement: { form: 'standard', standardUncertainty: standardDeviation, degreesOfFreedom },
  });
  return found(
    correctedReading({
      reading: later.reading,
      correction: correctionAt(calibration, later.at),
      parts: [
        scatter,
        ...limits(IDS.laterResolution, influences.resolution),
        ...limits(IDS.laterTemperature, later.temperature),
        ...limits(IDS.laterMismatch, later.mismatch, 'arcsine'),
        ...limits(IDS.linearity, later.linearity),
      ],
    }),
  );
}

/** Everything that the readings say; or, as a code, why they say nothing yet. */
export function calibrationOf(checked: CheckedAlternation): Calibration | CalibrationFault {
  const scatter = scatterOf(checked);
  if (scatter === undefined) return 'noScatter';
  const places = checked.places.map((place) => placeFound(checked, place, scatter));
  if (places.length > 1 && places.some(({ ownUncertainty }) => ownUncertainty === 0)) return 'nothingOwn';
  const line =
    places.length > 1
      ? correctionLine(
          places.map(({ at, value, ownUncertainty }) => ({
            at,
            correction: value,
            standardUncertainty: ownUncertainty,
          })),
        )
      : undefined;
  const calibration = { checked, places, line, scatter };
  return { ...calibration, later: laterFound(calibration) };
}
