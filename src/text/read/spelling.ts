import { type UnitName, unitText } from '../units.ts';

/** How people write each unit beside its words, spaces left out, micro as u. The first is the usual one. */
const spellings = (): Readonly<Partial<Record<UnitName, readonly string[]>>> => ({
  dB: ['dB'],
  dBm: ['dBm', 'dBmW'],
  dBW: ['dBW'],
  kW: ['kW'],
  W: ['W'],
  mW: ['mW'],
  uW: ['uW'],
  nW: ['nW'],
  V: ['V'],
  mV: ['mV'],
  Vrms: ['Vrms', 'Veff'],
  Vpp: ['Vpp', 'Vp-p', 'Vpk-pk'],
  Vp: ['Vp', 'Vpk', 'Vpeak'],
  ohm: ['ohm'],
  kohm: ['kohm', 'kohms'],
  A: ['A', 'amp', 'amps'],
  mA: ['mA'],
  percent: ['%', 'pct'],
  ppm: ['ppm'],
  K: ['K'],
  degC: ['\u00b0C', 'degC', 'C'],
  kHz: ['kHz'],
  MHz: ['MHz'],
  GHz: ['GHz'],
  um: ['um', 'micrometer', 'micrometers'],
  mm: ['mm', 'millimeter', 'millimeters'],
  m: ['m', 'meter', 'meters'],
  s: ['s'],
});

/** The words that are heard where a unit is told can be typed as well, for one and for several. */
const words = (unit: UnitName): readonly string[] =>
  ['1', '2'].map((count) => unitText('spoken', unit, count).replaceAll(' ', ''));

let exact: Map<string, UnitName> | undefined;
let anyCase: Map<string, UnitName> | undefined;

function fill(): { exact: Map<string, UnitName>; anyCase: Map<string, UnitName> } {
  const names = Object.entries(spellings()) as [UnitName, readonly string[]][];
  const rows = names.flatMap(([unit, short]) =>
    [...short, ...words(unit)].map((word) => [word, unit] as const),
  );
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
