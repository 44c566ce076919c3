import type { CheckKey } from '../../sheet/check-keys.ts';

/** Where a field stands in the sheet: `title`, `pad.amount` for a field of a link, `point1.nominal` for one of a point. */
export type FieldPath = string;

/** Path of a link's field. */
export const linkPath = (id: string, key: string): FieldPath => `${id}.${key}`;

/** Path of a point's field. */
export const pointPath = linkPath;

/** Path of a field of the validity checks. */
export const checkPath = (key: CheckKey): FieldPath => `check.${key}`;

/** Path of the reason for the logged change of that index. */
export const reasonPath = (index: number): FieldPath => `reason.${index}`;

/** Id of the control of a field in the page. */
export const controlId = (path: FieldPath): string => `field-${path.replace('.', '-')}`;
