import type { UnitName } from '../units.ts';

/** How people write each unit, spaces left out, micro as u. The first is the usual one. */
const spellings = (): Readonly<Partial<Record<UnitName, readonly string[]>>> => ({
  dB: ['dB', 'decibel', 'decibels'],
  dBm: ['dBm', 'dBmW'],
  dBW: ['dBW'],
  kW: ['kW'],
  W: ['W', 'watt', 'watts'],
  mW: ['mW', 'milliwatt', 'milliwatts'],
  uW: ['uW', 'microwatt', 'microwatts'],
  nW: ['nW'],
  V: ['V', 'volt', 'volts'],
  mV: ['mV', 'millivolt', 'millivolts'],
  Vrms: ['Vrms', 'Veff'],
  Vpp: ['Vpp', 'Vp-p', 'Vpk-pk'],
  Vp: ['Vp', 'Vpk', 'Vpeak'],
  ohm: ['ohm', 'ohms'],
  kohm: ['kohm', 'kohms'],
  A: ['A', 'ampere', 'amperes', 'amp', 'amps'],
  mA: ['mA', 'milliampere', 'milliamperes'],
  percent: ['%', 'percent', 'pct'],
  ppm: ['ppm'],
  K: ['K', 'kelvin', 'kelvins'],
  degC: ['\u00b0C', 'degC', 'C'],
  kHz: ['kHz'],
  MHz: ['MHz', 'megahertz'],
  GHz: ['GHz'],
  um: ['um', 'micrometre', 'micrometres', 'micrometer', 'micrometers'],
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  m: ['m', 'metre', 'metres', 'meter', 'meters'],
  s: ['s', 'second', 'seconds'],
});

let exact: Map<string, UnitName> | undefined;
let anyCase: Map<string, UnitName> | undefined;

function fill(): { exact: Map<string, UnitName>; anyCase: Map<string, UnitName> } {
  const names = Object.entries(spellings()) as [UnitName, readonly string[]][];
  const rows = names.flatMap(([unit, words]) => words.map((word) => [word, unit] as const));
  return { exact: new Map(rows), anyCase: new Map(rows.map(([word, unit]) => [word.toLowerCase(), unit])) };
}

/** Milli and mega differ by 1e9: a capital M never stands for milli, nor a small m beside capitals for mega. */
function prefixAgrees(typed: string, unit: UnitName): boolean {
  const [mine = '', its = ''] = [typed[0], unit[0]];
  return typed === typed.toLowerCase() || mine.toLowerCase() !== 'm' || mine === its;
}

/**
 * The unit that a spelling stands for; `none` for an empty one; undefined where it is not known. The case of letters is
 * forgiven (dbm, DB, khz), except where it tells milli from mega.
 */
export function unitOf(spelling: string): UnitName | undefined {
  const typed = spelling.replaceAll(' ', '');
  if (typed === '') return 'none';
  if (exact === undefined || anyCase === undefined) ({ exact, anyCase } = fill());
  const found = exact.get(typed);
  if (found !== undefined) return found;
  const similar = anyCase.get(typed.toLowerCase());
  return similar !== undefined && prefixAgrees(typed, similar) ? similar : undefined;
}
