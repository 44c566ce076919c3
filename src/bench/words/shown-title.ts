import type { Measurement, Point } from '../../sheet/measurement.ts';
import { isolated } from '../../text/isolate.ts';

/** How a point is called where it stands by its sheet's title: a reader's own name is kept apart, a frequency that stands for one is a number. */
export const nameOfPoint = ({ label, unnamed }: Pick<Point, 'label' | 'unnamed'>): string =>
  unnamed ? label : isolated(label);

/** Title of a sheet within a sentence, with its point where it has several. */
export const titleOf = (
  { title, points }: Pick<Measurement, 'title' | 'points'>,
  point: Pick<Point, 'label' | 'unnamed'>,
): string => (points.length > 1 ? `${isolated(title)}, ${nameOfPoint(point)}` : isolated(title));
