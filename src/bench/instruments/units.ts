import type { InstrumentEntries, InstrumentUnit, TermReading } from '../../instruments/instrument.ts';
import { type LinkUnit, METHODS, type MethodKind, UNITS_OF } from '../../sheet/method.ts';

/** How a link would state it, the first that its method knows. */
const LINK_UNITS: Readonly<Record<InstrumentUnit, readonly LinkUnit[]>> = {
  dB: ['dB'],
  percentOfPower: ['percentOfPower'],
  percentOfVolts: ['percentOfVolts'],
  voltsPeakToPeak: ['voltsPeakToPeak'],
  dcVolts: ['dcVolts', 'volts'],
  percentOfDcVolts: ['percentOfDcVolts'],
  dcAmperes: ['dcAmperes'],
  percentOfDcAmperes: ['percentOfDcAmperes'],
  percentOfResistance: ['percentOfResistance'],
  kelvin: ['kelvinRf', 'kelvinDc'],
};

/** What the terms of a limit are of, by method. */
const TERM_READING: Readonly<Record<MethodKind, TermReading>> = {
  padsIntoMeter: 'power',
  oscilloscope: 'voltsPeakToPeak',
  peakDetector: 'dcVolts',
  inLine: 'power',
  dcSubstitution: 'dcVolts',
};

/** Whether an instrument is stated as a sum of terms, whose unit is that of a reading. */
export const byTerms = ({ basis, form }: Pick<InstrumentEntries, 'basis' | 'form'>): boolean =>
  basis === 'dataSheet' && form === 'terms';

/** A unit of a link as numbers of it are typed, whatever the method. */
export const typedUnit = (unit: InstrumentUnit): LinkUnit => LINK_UNITS[unit][0] ?? 'dB';

/**
 * The unit in which a link of a method states this instrument; undefined where the method has no such reading. A thermometer is read
 * with RF and with DC: the link's own unit says which.
 */
export function linkUnit(
  entries: Pick<InstrumentEntries, 'basis' | 'form' | 'reads' | 'unit'>,
  method: MethodKind,
  own: LinkUnit,
): LinkUnit | undefined {
  const units: readonly LinkUnit[] = UNITS_OF[method];
  if (byTerms(entries)) return TERM_READING[method] === entries.reads ? units[0] : undefined;
  const fitting = LINK_UNITS[entries.unit].filter((unit) => units.includes(unit));
  return fitting.includes(own) ? own : fitting[0];
}

/** Methods whose sheets can use the instrument. */
export const methodsFor = (entries: InstrumentEntries): readonly MethodKind[] =>
  METHODS.filter((method) => linkUnit(entries, method, 'dB') !== undefined);
