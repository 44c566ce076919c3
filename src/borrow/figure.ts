import { propagate, TRANSFER_IDS } from '#compute';
import type { ResidualsProps } from '../figures/residuals.layout.ts';
import { type Calibration, correctionAt } from './calibration.ts';
import { lenderInput, sharedInputs } from './lender.ts';

/** Places of the line at which its band is reckoned. */
const STEPS = 24;
/** Room to both sides of the first and last place, as a share of the range. */
const ROOM = 0.06;

/** What is drawn of a calibration: what the correction leaves over, round by round or place by place. */
export function residualsOf(calibration: Calibration): Omit<ResidualsProps, 'frame'> {
  return calibration.line === undefined ? roundsFigure(calibration) : lineFigure(calibration);
}

function roundsFigure({ places: [place], checked }: Calibration): Omit<ResidualsProps, 'frame'> {
  const rounds = place?.rounds ?? [];
  const mean = place?.value ?? 0;
  const drifts = checked.places[0]?.rounds ?? [];
  const half =
    2 * (place?.propagation.budget.find(({ id }) => id === TRANSFER_IDS.scatter)?.contribution ?? 0);
  const domain = { lower: 0.5, upper: rounds.length + 0.5 };
  return {
    domain,
    whole: true,
    band: [domain.lower, domain.upper].map((x) => ({ x, lower: -half, upper: half })),
    points: rounds.map((correction, index) => ({
      x: index + 1,
      y: correction - mean,
      half: Math.abs((drifts[index]?.after ?? 0) - (drifts[index]?.before ?? 0)) / 2,
    })),
    dots: [],
  };
}

function lineFigure(calibration: Calibration): Omit<ResidualsProps, 'frame'> {
  const { line, places, checked } = calibration;
  if (line === undefined) return roundsFigure(calibration);
  const { lower, upper } = line.range;
  const shared = new Set([lenderInput(checked.lender), ...sharedInputs(checked)].map(({ id }) => id));
  const fitted = (at: number): number => line.correction + line.slope * (at - line.middle);
  const half = (at: number): number => {
    const { budget } = propagate({ model: correctionAt(calibration, at) });
    return (
      2 * Math.hypot(...budget.flatMap(({ id, contribution }) => (shared.has(id) ? [] : [contribution])))
    );
  };
  const room = ROOM * (upper - lower);
  return {
    domain: { lower: lower - room, upper: upper + room },
    whole: false,
    band: Array.from({ length: STEPS + 1 }, (_, step) => {
      const x = lower + ((upper - lower) * step) / STEPS;
      return { x, lower: -half(x), upper: half(x) };
    }),
    points: places.map(({ at, value, ownUncertainty }) => ({
      x: at,
      y: value - fitted(at),
      half: 2 * ownUncertainty,
    })),
    dots: places.flatMap(({ at, rounds }) =>
      rounds.map((correction) => ({ x: at, y: correction - fitted(at) })),
    ),
  };
}
