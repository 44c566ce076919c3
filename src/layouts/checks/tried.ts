import type { Check } from '../../checks/check.ts';
import { link } from '../link.ts';

/** Address of the state of a figure in which a check can be tried. */
export const triedHref = ({ path, state }: NonNullable<Check['tried']>): string =>
  link(`${path}?${state}#figure`);
