import type { UnitName } from './units.ts';

/** Units of power from large to small, each with the watts in one. */
const POWER_UNITS = [
  { unit: 'kW', watts: 1e3 },
  { unit: 'W', watts: 1 },
  { unit: 'mW', watts: 1e-3 },
  { unit: 'uW', watts: 1e-6 },
  { unit: 'nW', watts: 1e-9 },
  { unit: 'pW', watts: 1e-12 },
] as const satisfies readonly { unit: UnitName; watts: number }[];

/** The unit in which a power is a number from 1 to 999; the smallest for anything below. */
export function powerUnitFor(powerW: number): (typeof POWER_UNITS)[number] {
  const size = Math.abs(powerW);
  return POWER_UNITS.find(({ watts }) => size >= watts) ?? POWER_UNITS[5];
}
