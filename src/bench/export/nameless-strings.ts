import type { LinkKind } from '../../sheet/sheet.ts';

/** Words that stand for names which were left out. */
export const namelessStrings = {
  title: 'A transmitter',
  cause: (number: number): string => `cause ${number}`,
  reason: 'given, but left out here',
  kinds: {
    comparison: 'Comparison',
    meter: 'Instrument',
    mismatch: 'Mismatch',
    pad: 'Pad',
    cable: 'Cable or connector',
    amplifier: 'Amplifier',
    transmitter: 'The transmitter itself',
    other: 'Part',
  } satisfies Readonly<Record<LinkKind, string>>,
  numbered: (kind: string, number: number): string => `${kind} ${number}`,
} as const;
