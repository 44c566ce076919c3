import { type DefinitionEvent, definingConstant, inchInMillimetres } from '#compute';
import { groupedText, powerOfTenText } from '../text/power-of-ten-text.ts';
import { quantityText } from '../text/quantity-text.ts';

const whole = (value: number): string => groupedText('shown', String(value));
const mm = (value: number, decimals: number): string =>
  quantityText('shown', { value, decimals, unit: 'mm' });

/** What a unit was tied to from a year on, in words with the number of that definition. */
export function definitionWords({ code, value = Number.NaN, source }: DefinitionEvent): string {
  const words: Readonly<Record<DefinitionEvent['code'], () => string>> = {
    archiveMetre: () => 'the length of a platinum bar, after a survey of the Earth’s meridian',
    archiveKilogram: () => 'the mass of a platinum cylinder, after a cubic decimetre of water',
    prototypeMetre: () => 'the distance of two lines on a bar of platinum and iridium',
    prototypeKilogram: () => 'the mass of a cylinder of platinum and iridium',
    metrePerInchUs: () =>
      `in the USA the metre over ${whole(value)}, which is ${groupedText('shown', mm(inchInMillimetres('us1893'), 6))}`,
    millimetresExact: () =>
      `${mm(inchInMillimetres('international1959'), 1)} exactly, as national laboratories agreed`,
    forceBetweenWires: () =>
      `the direct current with which two long thin wires, a metre apart, pull at each other with ${powerOfTenText('shown', { value, digits: 1 })} newtons on each metre`,
    kryptonWavelengths: () => `${whole(value)} wavelengths of an orange line of krypton-86`,
    tropicalYear: () => `the ${whole(value)}th part of the tropical year 1900`,
    caesium: () => `${whole(value)} periods of the caesium transition`,
    speedOfLight: () => `the way of light in a second over ${whole(value)}`,
    elementaryCharge: () =>
      `what gives the elementary charge the number ${powerOfTenText('shown', { value: definingConstant('elementaryCharge'), digits: 10 })} in C`,
    planckConstant: () =>
      `what gives the Planck constant the number ${powerOfTenText('shown', { value: definingConstant('planck'), digits: 9 })} in J s`,
  };
  return `${words[code]()}${source === 'fromMemory' ? ' (from memory)' : ''}`;
}
