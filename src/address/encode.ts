import type { AddressSpec, Fields, ListSpec, ScalarSpec, StateOf } from './field-spec.ts';
import { encodeScalar, scalarFault } from './scalar.ts';

type Pair = readonly [key: string, value: string];
type Scalar = number | string | undefined;
type Record_ = Readonly<Record<string, Scalar>>;

function scalarPairs(where: string, key: string, field: ScalarSpec, value: Scalar): readonly Pair[] {
  const fault = scalarFault(field, value);
  if (fault !== undefined) throw new RangeError(`encode: ${where} ${fault}, got ${String(value)}`);
  return Object.is(value, field.default) ? [] : [[key, encodeScalar(field, value)]];
}

const sameRecord = (a: Record_, b: Record_): boolean =>
  Object.keys(a).every((name) => Object.is(a[name], b[name]));

/** The number of records, then each record's own pairs: key of the list, number of the record from 1, key of the field. */
function listPairs(name: string, field: ListSpec, records: readonly Record_[]): readonly Pair[] {
  if (records.length > field.maxLength)
    throw new RangeError(
      `encode: ${name} must have at most ${field.maxLength} records, got ${records.length}`,
    );
  const same =
    records.length === field.default.length &&
    records.every((record, index) => sameRecord(record, field.default[index] ?? {}));
  const own = records.flatMap((record, index) =>
    Object.entries(field.of).flatMap(([part, spec]) =>
      scalarPairs(`${name}.${index + 1}.${part}`, `${field.key}${index + 1}${spec.key}`, spec, record[part]),
    ),
  );
  return same ? [] : [[field.key, String(records.length)], ...own];
}

/**
 * A state as the part of an address after `?` or `#`: letters, digits and `- . _ = &` alone, values that are the default left
 * out, the version last. It therefore never ends in punctuation, and shows when it was cut short.
 * @param instance name of the widget on a page with several: its keys then read `name.key`.
 * @throws RangeError if the state holds a value that its specification forbids.
 */
export function encode<Of extends Fields>(
  spec: AddressSpec<Of>,
  state: StateOf<Of>,
  instance?: string,
): string {
  const prefix = instance === undefined ? '' : `${instance}.`;
  return [...pairsIn(spec, state), ['v', String(spec.version)] as const]
    .map(([key, value]) => `${prefix}${key}=${value}`)
    .join('&');
}

function pairsIn<Of extends Fields>(spec: AddressSpec<Of>, state: StateOf<Of>): readonly Pair[] {
  return Object.entries(spec.fields).flatMap(([name, field]) => {
    const value: unknown = state[name];
    // StateOf ties the value to its field's type; entries of a generic record lose that tie.
    if (field.type === 'list') return listPairs(name, field, value as readonly Record_[]);
    return scalarPairs(name, field.key, field, value as Scalar);
  });
}
