/** Where a field stands in the sheet: `nominal`, or `pad.amount` for a field of a link. */
export type FieldPath = string;

/** Path of a link's field. */
export const linkPath = (id: string, key: string): FieldPath => `${id}.${key}`;

/** Id of the control of a field in the page. */
export const controlId = (path: FieldPath): string => `field-${path.replace('.', '-')}`;
