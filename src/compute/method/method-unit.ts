import type { DcSubstitutionUnit } from './dc-substitution.ts';
import type { RelativeUnit } from './method.ts';

/**
 * Unit of a statement about a part of a measurement, of whatever method: what any power bears, volts of a trace or of a
 * detector's meter, and what a DC substitution reads.
 */
export type MethodUnit = RelativeUnit | 'voltsPeakToPeak' | 'volts' | DcSubstitutionUnit;
