/** The five defining constants that mechanics, electricity and heat rest on; the numbers are exact by definition. */
export type DefiningConstant =
  | 'caesiumFrequency'
  | 'lightSpeed'
  | 'planck'
  | 'elementaryCharge'
  | 'boltzmann';

/** Units of the tree. */
export type SiUnit =
  | 'second'
  | 'metre'
  | 'kilogram'
  | 'ampere'
  | 'kelvin'
  | 'newton'
  | 'joule'
  | 'watt'
  | 'coulomb'
  | 'volt'
  | 'ohm';

/** Value of a defining constant in its SI unit. Source: SI Brochure, 9th edition, 2.2, in force since 20 May 2019. */
export function definingConstant(constant: DefiningConstant): number {
  switch (constant) {
    case 'caesiumFrequency':
      return 9_192_631_770;
    case 'lightSpeed':
      return 299_792_458;
    case 'planck':
      return 6.626_070_15e-34;
    case 'elementaryCharge':
      return 1.602_176_634e-19;
    case 'boltzmann':
      return 1.380_649e-23;
  }
}

/** A part of a unit's definition: another unit or a defining constant, with its power. */
export interface UnitPart {
  readonly of: SiUnit | DefiningConstant;
  readonly power: number;
}

const part = (of: UnitPart['of'], power = 1): UnitPart => ({ of, power });

/**
 * What a unit is made of, one step down the tree: 1 volt is 1 watt per ampere; a metre rests on c and the second.
 * Source: SI Brochure, 9th edition, 2.3.1 (base units) and table 4 (derived units).
 */
export function partsOf(unit: SiUnit): readonly UnitPart[] {
  switch (unit) {
    case 'second':
      return [part('caesiumFrequency', -1)];
    case 'metre':
      return [part('lightSpeed'), part('second')];
    case 'kilogram':
      return [part('planck'), part('metre', -2), part('second')];
    case 'ampere':
      return [part('elementaryCharge'), part('second', -1)];
    case 'kelvin':
      return [part('boltzmann', -1), part('joule')];
    case 'newton':
      return [part('kilogram'), part('metre'), part('second', -2)];
    case 'joule':
      return [part('newton'), part('metre')];
    case 'watt':
      return [part('joule'), part('second', -1)];
    case 'coulomb':
      return [part('ampere'), part('second')];
    case 'volt':
      return [part('watt'), part('ampere', -1)];
    case 'ohm':
      return [part('volt'), part('ampere', -1)];
  }
}

const isUnit = (of: UnitPart['of']): of is SiUnit =>
  of !== 'caesiumFrequency' &&
  of !== 'lightSpeed' &&
  of !== 'planck' &&
  of !== 'elementaryCharge' &&
  of !== 'boltzmann';

/** The powers of the defining constants that a unit comes down to: a watt is h times the square of the caesium frequency. */
export function constantsOf(unit: SiUnit): ReadonlyMap<DefiningConstant, number> {
  const powers = new Map<DefiningConstant, number>();
  const add = (constant: DefiningConstant, power: number) =>
    powers.set(constant, (powers.get(constant) ?? 0) + power);
  for (const { of, power } of partsOf(unit)) {
    if (isUnit(of)) for (const [constant, inner] of constantsOf(of)) add(constant, inner * power);
    else add(of, power);
  }
  for (const [constant, power] of powers) if (power === 0) powers.delete(constant);
  return powers;
}

/**
 * How many of the product of its defining constants one unit is: 1 unit = number x product of constants to their powers.
 * A metre is 30.663 319 c over the caesium frequency. Relative error: a few units in the last place.
 */
export function numberOfConstants(unit: SiUnit): number {
  let number = 1;
  for (const [constant, power] of constantsOf(unit)) number /= definingConstant(constant) ** power;
  return number;
}
