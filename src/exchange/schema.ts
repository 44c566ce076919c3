import * as v from 'valibot';
import type { Fields, ListSpec, ScalarSpec, TextSpec } from '../address/field-spec.ts';
import { cleanLines } from '../address/text-code.ts';
import { cleanText } from '../text/clean.ts';
import { LONGEST_COLUMN, MOST_THINGS } from './file-form.ts';

/** From this on a text of several lines is a column of readings, which a file has more room for than an address. */
const COLUMN_FROM = 10_000;

/** Most characters of a text in a file. */
export const longestIn = ({ lines, maxLength }: TextSpec): number =>
  lines && maxLength >= COLUMN_FROM ? LONGEST_COLUMN : maxLength;

/** A text as a file may hold it: no control characters, no marks that turn the direction of writing, no longer than it may be. */
export const fittingText = (field: TextSpec, text: string): string => {
  const clean = field.lines ? cleanLines : cleanText;
  return clean(clean(text).slice(0, longestIn(field)));
};

function scalarSchema(field: ScalarSpec): v.GenericSchema<unknown> {
  switch (field.type) {
    case 'number':
      return v.pipe(v.number(), v.finite(), v.minValue(field.min), v.maxValue(field.max));
    case 'maybe':
      return v.pipe(
        v.nullable(v.pipe(v.number(), v.finite(), v.minValue(field.min), v.maxValue(field.max))),
        v.transform((value) => value ?? undefined),
      );
    case 'choice':
      return v.picklist(Object.keys(field.choices));
    case 'text':
      return v.pipe(
        v.string(),
        v.maxLength(longestIn(field)),
        v.transform((text) => fittingText(field, text)),
      );
  }
}

/** So many things at most: counted before any is looked at, since a file may hold a million. */
const counted = (fields: Fields, most: number): v.GenericSchema<unknown> =>
  v.pipe(v.array(v.unknown()), v.maxLength(most), v.array(thingSchema(fields)));

const listSchema = (field: ListSpec): v.GenericSchema<unknown> => counted(field.of, field.maxLength);

/**
 * What one thing in a file must be: an object with fields that it may leave out, which then have their default. Only the own
 * properties that have a field are taken over, into a new object.
 */
function thingSchema(fields: Fields): v.GenericSchema<unknown> {
  const entries = Object.entries(fields).map(([name, field]) => [
    name,
    v.optional(field.type === 'list' ? listSchema(field) : scalarSchema(field), () => field.default),
  ]);
  // an array has no fields, but is an object to a schema that asks for none of them
  return v.pipe(
    v.custom<object>((value) => typeof value === 'object' && value !== null && !Array.isArray(value)),
    v.object(Object.fromEntries(entries)),
  );
}

/** A list of things under its name in a file. */
export const thingsSchema = (fields: Fields): v.GenericSchema<unknown> => counted(fields, MOST_THINGS);
