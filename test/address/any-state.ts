import fc from 'fast-check';
import type { Fields, ScalarSpec, StateOf } from '../../src/address/field-spec.ts';
import { cleanLines } from '../../src/address/text-code.ts';
import { cleanText } from '../../src/text/clean.ts';
import { anyText } from '../text/any-text.ts';

const anyNumber = ({ min, max, whole }: { min: number; max: number; whole?: boolean }) =>
  whole === true
    ? fc.integer({ min: Math.ceil(min), max: Math.floor(max) })
    : fc.oneof(
        fc.double({ min, max, noNaN: true }),
        fc
          .integer({ min: Math.ceil(min * 100), max: Math.floor(max * 100) })
          .map((hundredths) => hundredths / 100),
      );

function anyScalar(field: ScalarSpec): fc.Arbitrary<number | string | undefined> {
  switch (field.type) {
    case 'number':
      return fc.oneof(fc.constant(field.default), anyNumber(field));
    case 'maybe':
      return fc.oneof(fc.constant(undefined), fc.constant(field.default), anyNumber(field));
    case 'choice':
      return fc.constantFrom(...Object.keys(field.choices));
    case 'text':
      return fc
        .oneof(
          fc.constant(field.default),
          fc.constant('7.1\n-7.2 dBm'),
          fc.string({ unit: 'grapheme' }),
          anyText(),
        )
        .map((text) => {
          const clean = field.lines ? cleanLines : cleanText;
          return clean(clean(text).slice(0, field.maxLength));
        });
  }
}

/** Any allowed state of the fields: for laws, and for random actions in the tests of widgets. */
export function anyState<Of extends Fields>(fields: Of): fc.Arbitrary<StateOf<Of>> {
  const parts = Object.entries(fields).map(([name, field]) => [
    name,
    field.type === 'list'
      ? fc.oneof(
          fc.constant(field.default),
          fc.array(anyState(field.of), { maxLength: Math.min(12, field.maxLength) }),
        )
      : anyScalar(field),
  ]);
  // Built field by field from the same specification that StateOf is derived from.
  return fc.record(Object.fromEntries(parts), { noNullPrototype: true }) as unknown as fc.Arbitrary<
    StateOf<Of>
  >;
}
