import type { RecordEntries } from '../../sheet/entries.ts';

/** What the fields of the record are called, on the form, on paper and where something is wrong with one of them. */
export const recordLabels = {
  by: 'Measured by',
  date: 'When',
  instruments: 'Instruments',
  certificates: 'Certificates',
  supply: 'Supply',
  temperature: 'Temperature',
  remarks: 'Remarks',
} satisfies Readonly<Record<keyof RecordEntries, string>>;
