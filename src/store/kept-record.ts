/** What is kept of a thing beside the thing itself. */
export interface KeptHead {
  readonly id: string;
  readonly name: string;
  /** When it was first and last kept (ISO 8601), by the clock of this device, which may be wrong: nothing is ordered by it. */
  readonly created: string;
  readonly changed: string;
  /** Number of its latest change, counted over all of its kind: the later change has the higher one. */
  readonly revision: number;
}

/** A thing that is kept. */
export interface Kept<Value> extends KeptHead {
  readonly value: Value;
}

/** A thing as it lies in the database, with the version of the form in which it was written. */
export interface KeptRecord extends KeptHead {
  readonly version: number;
  readonly value: unknown;
}

/** What kind of thing is kept, and how it is read again. */
export interface KeptForm<Value> {
  /** Version of the form that is written now; 1 or more. */
  readonly version: number;
  /** Reads what this or an older version wrote; undefined where it is nothing of the kind. Must not throw. */
  readonly read: (value: unknown, version: number) => Value | undefined;
}

const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && Number(value) > 0;

/** Whether what lies in the database is a record at all. */
export function isRecord(found: unknown): found is KeptRecord {
  if (typeof found !== 'object' || found === null) return false;
  const { id, name, created, changed, revision, version } = found as Partial<
    Record<keyof KeptRecord, unknown>
  >;
  const texts = [id, name, created, changed].every((text) => typeof text === 'string');
  return texts && isCount(revision) && isCount(version);
}

const headOf = ({ id, name, created, changed, revision }: KeptRecord): KeptHead => ({
  id,
  name,
  created,
  changed,
  revision,
});

/** What a record says: the thing, or why it cannot be read. */
export type Reading<Value> =
  | { readonly item: Kept<Value> }
  | { readonly head: KeptHead; readonly problem: 'newer' | 'damaged' };

/** Reads a record; what a newer version wrote is not even looked at. */
export function readRecord<Value>(record: KeptRecord, { version, read }: KeptForm<Value>): Reading<Value> {
  const head = headOf(record);
  if (record.version > version) return { head, problem: 'newer' };
  const value = read(record.value, record.version);
  return value === undefined ? { head, problem: 'damaged' } : { item: { ...head, value } };
}
