/** Where a field stands in the sheet: `title`, `pad.amount` for a field of a link, `point1.nominal` for one of a point. */
export type FieldPath = string;

/** Path of a link's field. */
export const linkPath = (id: string, key: string): FieldPath => `${id}.${key}`;

/** Path of a point's field. */
export const pointPath = linkPath;

/** Id of the control of a field in the page. */
export const controlId = (path: FieldPath): string => `field-${path.replace('.', '-')}`;
