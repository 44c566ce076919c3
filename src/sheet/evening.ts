/** Where the scatter is known from: the readings of the evening alone, or all evenings before. */
export const SCATTERS = ['own', 'pooled'] as const;
export type ScatterKnown = (typeof SCATTERS)[number];

/** Readings that are repeated, and what they all have in common. */
export interface Repeated {
  /** How many of the evening's readings are used, one to ten. */
  readonly count: number;
  readonly known: ScatterKnown;
  /** Limits of all that is the same in every reading, in dB; 0 where there is nothing. */
  readonly limitsDb: number;
}

/** Everything unplugged and connected again before each reading, in dBm. Invented. */
export const EVENING_DBM = [26.84, 27.02, 26.71, 26.95, 26.88, 27.1, 26.79, 26.9, 26.98, 26.83] as const;

/** The first three readings of the evening, and nothing in common. */
export const clubReadings = (): Repeated => ({ count: 3, known: 'own', limitsDb: 0 });
