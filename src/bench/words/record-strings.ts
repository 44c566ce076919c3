import type { RecordEntries } from '../../sheet/entries.ts';
import { recordLabels } from './record-labels.ts';

/** Words of the record. */
export const recordStrings = {
  heading: 'Record',
  intro:
    'What somebody else needs to repeat the measurement, or to believe it. All of it in your own words, printed and copied with the result; nothing here enters the sums.',
  labels: recordLabels,
  help: {
    by: 'A name or initials.',
    date: 'Day and hour, as you write them.',
    instruments: 'Your own labels, one a line: pad no. 3, the meter that was lent.',
    certificates: 'Number, date and laboratory, for each instrument that has one.',
    supply: 'Voltage at the transmitter with the key down.',
    temperature: 'Of the room, and how long all was switched on.',
    remarks: 'Whatever was unusual.',
  } satisfies Readonly<Record<keyof RecordEntries, string>>,
  nothing: 'Who measured, when and with what has not been noted.',
  calibrated: (day: string): string => `Calibrated on ${day}.`,
  agreed: 'Agreed',
  notLocked: 'Specification and rule are not locked: no reading has been entered since the sheet was opened.',
  openPoints: (points: string): string => `still open, since nothing was read there: ${points}`,
  lockedAt: (time: string): string => `Specification and rule, locked at the first reading, ${time}`,
  unchanged: 'not changed since',
  changed: (time: string): string => `Changed ${time}`,
  change: ({ what, from, to, reason }: { what: string; from: string; to: string; reason: string }): string =>
    `${what}: from ${from} to ${to}; ${reason}`,
  rule: 'rule',
  specification: 'specification',
  specificationOf: (point: string): string => `specification of ${point}`,
  goneSpecification: 'specification of a point that was taken away',
  andMore: (count: number): string => `and ${count} more`,
  unnamedPoint: (position: number): string => `point ${position}`,
  emptyText: 'nothing',
  reason: (reason: string): string => `reason: ${reason}`,
  noReason: 'no reason given',
  logHeading: 'What was agreed, and what was changed',
  checksHeading: 'Validity checks',
  notMade: 'Not made',
  checks: {
    waiting: 'Validity checks have been begun or made; what they say is being fetched.',
    failed: 'Validity checks have been begun or made; what they say could not be fetched.',
    notOwn: 'Validity checks have been begun or made; they say nothing before every entry can be used.',
  },
  noChecks: 'None of the validity checks that the method offers has been made.',
} as const;
