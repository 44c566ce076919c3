import { sheetAt } from '../../sheet/at-point.ts';
import type { LinkEntries, SheetEntries } from '../../sheet/entries.ts';
import type { Measurement, Point } from '../../sheet/measurement.ts';
import { outcomeAt } from '../../sheet/outcome-at.ts';
import { outcomeOf } from '../../sheet/to-model.ts';
import { isolated } from '../../text/isolate.ts';
import { linkPath, pointPath } from '../form/keys.ts';
import { reachOfInputs } from '../results/reach.ts';
import { strings } from '../strings.ts';
import type { EntryProblem } from './collector.ts';
import { linkLabel } from './link-reader.ts';
import { FORM_KEYS } from './link-spec.ts';
import { problemStrings } from './problem-strings.ts';
import { LEVEL_LIMIT_DBM, WIDEST_CHAIN_DB } from './spec.ts';
import { tabledProblem } from './tabled-problem.ts';

/**
 * What is wrong with a measurement whose every field can be used: percentages that reach down to nothing at a reading, and sums
 * that no measurement reaches. Undefined where nothing is; a method out of range is nothing wrong.
 */
export function measurementProblem(
  measurement: Measurement,
  entries: SheetEntries,
): EntryProblem | undefined {
  const { setup, measurand, repeatability } = measurement;
  const common = JSON.stringify([setup, measurand, repeatability]);
  for (const point of measurement.points) {
    const problem = problemOnce(point, { links: measurement.links, common }, () =>
      problemAtPoint(measurement, point, entries),
    );
    if (problem !== undefined) return problem;
  }
  return undefined;
}

interface Around {
  readonly links: Measurement['links'];
  /** The rest of what the sums at a point hang on. */
  readonly common: string;
}

const checked = new WeakMap<Point, Around>();

/** A point that was found in order stays so while nothing around it changes: points and links are never changed in place. */
function problemOnce(
  point: Point,
  around: Around,
  check: () => EntryProblem | undefined,
): EntryProblem | undefined {
  const before = checked.get(point);
  if (before !== undefined && isSame(before, around)) return undefined;
  const problem = check();
  if (problem === undefined) checked.set(point, around);
  return problem;
}

const isSame = (one: Around, other: Around): boolean =>
  one.common === other.common &&
  one.links.length === other.links.length &&
  one.links.every((link, index) => link === other.links[index]);

function problemAtPoint(
  measurement: Measurement,
  point: Point,
  entries: SheetEntries,
): EntryProblem | undefined {
  const tabled = attempt(() => ({ problem: tabledProblem(measurement, point, entries) }));
  if (tabled?.problem !== undefined) return tabled.problem;
  const outcome = attempt(() => outcomeAt(measurement, point.id).outcome);
  if (outcome === undefined) return culprit(measurement, point, entries);
  if (!outcome.inRange) return undefined;
  const { constant, inputs } = outcome.model;
  const at = wholeChain(measurement, point);
  if (Math.abs(constant) > LEVEL_LIMIT_DBM)
    return { ...at, problem: problemStrings.levelBeyond(LEVEL_LIMIT_DBM) };
  if (reachOfInputs(inputs) > WIDEST_CHAIN_DB)
    return { ...at, problem: problemStrings.tooWide(WIDEST_CHAIN_DB) };
  return undefined;
}

/** What a computation gives, or undefined where it refuses its numbers. */
function attempt<Of>(compute: () => Of): Of | undefined {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return undefined;
  }
}

function wholeChain({ links, points }: Measurement, { id, label }: Point) {
  const [first] = links.filter(({ off }) => !off);
  const path = first ? linkPath(first.id, 'loss') : pointPath(id, 'readings');
  const { at, wholeChain: words } = problemStrings;
  return { path, label: points.length > 1 ? at(isolated(label), words) : words };
}

/** The link without which the sums would do; the readings where none is. */
function culprit(measurement: Measurement, point: Point, entries: SheetEntries): EntryProblem {
  const refused = measurement.links.find(
    (link) =>
      !link.off &&
      attempt(() => outcomeOf(sheetAt({ ...measurement, links: [link] }, point.id))) === undefined,
  );
  const index = entries.links.findIndex(({ id }) => id === refused?.id);
  const link = entries.links[index];
  const problem =
    measurement.points.length > 1
      ? problemStrings.noComponentAt(isolated(point.label))
      : problemStrings.noComponent;
  if (link === undefined)
    return { path: pointPath(point.id, 'readings'), label: strings.point.labels.readings, problem };
  const key = keyOf(link);
  const label = strings.link.fieldOf(isolated(linkLabel(link, index + 1)), strings.link.labels[key]);
  return { path: linkPath(link.id, key), label, problem };
}

const keyOf = ({ form }: LinkEntries) => FORM_KEYS[form][0] ?? 'amount';
