import type { Rule, Specification } from '#compute';
import { measurementOf } from '../../sheet/at-point.ts';
import { blankChecks } from '../../sheet/blank-sheet.ts';
import {
  blankLink,
  blankPoint,
  type LinkEntries,
  type PointEntries,
  type SheetEntries,
  type SpecificationForm,
} from '../../sheet/entries.ts';
import type { Measurement, Point, StatedLink } from '../../sheet/measurement.ts';
import { COLUMNS_OF, type MethodKind } from '../../sheet/method.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { HZ_PER_MHZ } from '../read/spec.ts';
import { setupEntries } from './setup-entries.ts';
import { statedEntries, statementEntries } from './statement-entries.ts';
import { tidy, typed, typedMaybe, typedWith } from './typed.ts';

export { statementEntries, typed };

const level = (value: number | undefined): string => typedWith(value, 'dBm');

/** A measurement as it would have been typed, or a sheet of pads and cable into a meter: the inverse of `readMeasurement`. */
export function entriesOf(stated: Sheet | Measurement): SheetEntries {
  const measurement = stated.version === 1 ? measurementOf(stated) : stated;
  const { measurand, repeatability, setup } = measurement;
  return {
    ...setupEntries(setup),
    ...measurement.record,
    title: measurement.title,
    power: measurand.power,
    delivery: measurand.delivery ?? 'intoIdeal',
    keying: measurand.keying ?? 'keyDown',
    plane: measurand.plane,
    conditions: measurand.conditions,
    ...ruleEntries(measurement.rule),
    damage: level(measurement.damageLevelDbm),
    scatter: typedMaybe(repeatability?.standardDeviationDb),
    repeats: repeatability ? typed(repeatability.degreesOfFreedom + 1) : '',
    points: measurement.points.map((point) => pointEntries(point, setup.method)),
    links: measurement.links.map(linkEntries),
    log: { lockedAt: '', changes: [] },
    checks: blankChecks(),
  };
}

/** One point as it would have been typed. */
function pointEntries(point: Point, method: MethodKind): PointEntries {
  const columns = COLUMNS_OF[method].map((column) => {
    const values = point.columns[column];
    return [
      column,
      values.map((value) => (method === 'padsIntoMeter' ? level(value) : typed(value))).join('\n'),
    ];
  });
  return {
    ...blankPoint(point.id),
    label: point.unnamed ? '' : point.label,
    frequency: typedWith(point.frequencyHz && tidy(point.frequencyHz / HZ_PER_MHZ), 'MHz'),
    ...specificationEntries(point),
    ...Object.fromEntries(columns),
  };
}

function specificationEntries({ specification: { lower, upper }, licence }: Point) {
  return {
    specification: formOf(
      { ...(lower !== undefined && { lower }), ...(upper !== undefined && { upper }) },
      licence,
    ),
    ...(lower !== undefined &&
      upper !== undefined && {
        nominal: level(tidy((lower + upper) / 2)),
        tolerance: typed(tidy((upper - lower) / 2)),
      }),
    lowest: level(lower),
    highest: level(upper),
  };
}

const formOf = ({ lower, upper }: Specification, licence: true | undefined): SpecificationForm =>
  licence ? 'licence' : lower === undefined ? 'atMost' : upper === undefined ? 'atLeast' : 'around';

const ruleEntries = (rule: Rule) => ({
  rule: rule.kind,
  multiplier: rule.kind === 'guardBand' ? typed(rule.multiplier) : '1',
  required: rule.kind === 'probability' ? typed(tidy(100 * rule.required)) : '95',
});

/** One link as it would have been typed. */
export function linkEntries(link: StatedLink): LinkEntries {
  const { id, label, kind, unit, percentOf, source, reliability } = link;
  return {
    ...blankLink(id),
    label,
    kind,
    unit,
    percentOf,
    source,
    loss: typed(link.lossDb),
    rated: typedWith(link.ratedPowerW, 'W'),
    cause: link.cause ?? '',
    direction: link.sensitivity === -1 ? 'against' : 'with',
    reliability: typedMaybe(reliability && tidy(100 * reliability)),
    off: link.off ?? false,
    assumed: link.assumed ?? false,
    ...statedEntries(link.stated),
  };
}
