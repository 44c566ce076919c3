import {
  type BandResult,
  type BudgetRow,
  componentOf,
  type Input,
  type Statement,
  type SumModel,
} from '#compute';
import { bandOf } from './band.ts';

/** What is known between the limits of the pads. */
export const BETWEEN = ['rectangular', 'triangular', 'arcsine'] as const;
export type Between = (typeof BETWEEN)[number];

/** What stands behind the ± of the meter: limits, or a certificate's U with k = 2. */
export const METER_SAYS = ['limits', 'certificate'] as const;
export type MeterSays = (typeof METER_SAYS)[number];

/** Pads of one make in a row into a meter, each with its own limits, which have nothing to do with one another. */
export interface PadsInARow {
  readonly count: number;
  readonly padDb: number;
  readonly between: Between;
  readonly meterDb: number;
  readonly meterSays: MeterSays;
}

/** Three pads in a row into a meter. Invented, as is all of this. */
export const clubRow = (): PadsInARow => ({
  count: 3,
  padDb: 0.5,
  between: 'rectangular',
  meterDb: 0.3,
  meterSays: 'limits',
});

/** Id of the meter among the inputs. */
export const METER = 'meter';

function meterStatement({ meterDb, meterSays }: PadsInARow): Statement {
  return meterSays === 'limits'
    ? { form: 'limits', shape: 'rectangular', halfWidth: meterDb }
    : { form: 'expanded', expanded: meterDb, coverageFactor: 2 };
}

/** The sum of what pads and meter may be off, in dB, about nothing. A meter that is never off is left out. */
export function rowModel(of: PadsInARow): SumModel {
  const pads = Array.from(
    { length: of.count },
    (_, index): Input =>
      componentOf({
        id: `pad${index + 1}`,
        statement: { form: 'limits', shape: of.between, halfWidth: of.padDb },
        unit: 'dB',
      }),
  );
  const meter =
    of.meterDb === 0 ? [] : [componentOf({ id: METER, statement: meterStatement(of), unit: 'dB' })];
  const inputs = [...pads, ...meter];
  return { kind: 'sum', constant: 0, inputs, sensitivities: inputs.map(() => 1) };
}

/** Worst case and propagation of the row. */
export const rowResult = (of: PadsInARow): BandResult => bandOf(rowModel(of));

/** The stated numbers one by one, pads first, in dB. */
export const statedLengths = (of: PadsInARow): readonly number[] => [
  ...Array.from({ length: of.count }, () => of.padDb),
  ...(of.meterDb === 0 ? [] : [of.meterDb]),
];

/** All stated numbers end to end: a guarantee only where each of them is a limit. */
export const sumOfStated = (of: PadsInARow): number => statedLengths(of).reduce((sum, each) => sum + each, 0);

/** The root of the sum of the squares of the stated numbers, which many take for more than it is. */
export const rootOfStated = (of: PadsInARow): number => Math.hypot(...statedLengths(of));

/** The part with the largest share of the variance; the first of several alike. */
export function dominantOf(of: PadsInARow): BudgetRow {
  const [first, ...rest] = rowResult(of).propagation.budget;
  if (first === undefined) throw new RangeError('dominantOf: a row must have parts, got none');
  return rest.reduce((most, row) => (row.share > most.share * (1 + 1e-12) ? row : most), first);
}
