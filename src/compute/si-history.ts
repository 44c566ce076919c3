/** What a unit was tied to from a year on, as a code; `value` is the number in that definition, where it has one. */
export interface DefinitionEvent {
  readonly year: number;
  readonly unit: 'second' | 'metre' | 'kilogram' | 'ampere' | 'inch';
  readonly code:
    | 'tropicalYear'
    | 'caesium'
    | 'archiveMetre'
    | 'prototypeMetre'
    | 'kryptonWavelengths'
    | 'speedOfLight'
    | 'archiveKilogram'
    | 'prototypeKilogram'
    | 'planckConstant'
    | 'forceBetweenWires'
    | 'elementaryCharge'
    | 'metrePerInchUs'
    | 'millimetresExact';
  readonly value?: number;
  readonly source: 'siBrochure' | 'nbsCircular572' | 'fromMemory';
}

/**
 * When and to what the metre, the inch, the kilogram, the ampere and the second were tied, in order of time.
 * Sources: SI Brochure, 9th edition, Appendix 4; addendum to NBS Circular 572 (1 yd = 0.9144 m from 1 July 1959).
 */
export const DEFINITION_EVENTS = [
  /** Platinum: a bar after a survey of the meridian, a cylinder after a cubic decimetre of water. */
  { year: 1799, unit: 'metre', code: 'archiveMetre', source: 'fromMemory' },
  { year: 1799, unit: 'kilogram', code: 'archiveKilogram', source: 'fromMemory' },
  { year: 1889, unit: 'metre', code: 'prototypeMetre', source: 'siBrochure' },
  { year: 1889, unit: 'kilogram', code: 'prototypeKilogram', source: 'siBrochure' },
  /** A metre was 39.37 US inches: 25.400 050 8 mm each. */
  { year: 1893, unit: 'inch', code: 'metrePerInchUs', value: 39.37, source: 'fromMemory' },
  /** Newtons on each metre of two parallel wires, a metre apart in vacuum. */
  { year: 1948, unit: 'ampere', code: 'forceBetweenWires', value: 2e-7, source: 'fromMemory' },
  { year: 1959, unit: 'inch', code: 'millimetresExact', value: 25.4, source: 'nbsCircular572' },
  { year: 1960, unit: 'metre', code: 'kryptonWavelengths', value: 1_650_763.73, source: 'siBrochure' },
  { year: 1960, unit: 'second', code: 'tropicalYear', value: 31_556_925.9747, source: 'siBrochure' },
  { year: 1967, unit: 'second', code: 'caesium', value: 9_192_631_770, source: 'siBrochure' },
  { year: 1983, unit: 'metre', code: 'speedOfLight', value: 299_792_458, source: 'siBrochure' },
  { year: 2019, unit: 'kilogram', code: 'planckConstant', value: 6.626_070_15e-34, source: 'siBrochure' },
  { year: 2019, unit: 'ampere', code: 'elementaryCharge', value: 1.602_176_634e-19, source: 'siBrochure' },
] as const satisfies readonly DefinitionEvent[];

/** Length of an inch in millimetres: 25.4 exactly since 1 July 1959; in the USA 1000/39.37 before, 2 ppm longer. */
export function inchInMillimetres(definition: 'us1893' | 'international1959'): number {
  return definition === 'us1893' ? 1000 / 39.37 : 25.4;
}
