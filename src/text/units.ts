import { baseOf, type Style } from './style.ts';

/** How one unit is written: on the page, in ASCII, and in words for one and for several. */
interface UnitText {
  readonly shown: string;
  /** Where it differs from `shown`. */
  readonly ascii?: string;
  readonly one: string;
  readonly several: string;
}

/** Unit texts in which only a trailing s tells several from one. */
const plain = (shown: string, one: string): UnitText => ({ shown, one, several: `${one}s` });
/** Unit texts whose words are the same for one and several. */
const same = (shown: string, words: string): UnitText => ({ shown, one: words, several: words });

// Made on first use, so that a page which formats nothing carries nothing.
const table = () => ({
  dB: plain('dB', 'decibel'),
  dBm: plain('dBm', 'decibel-milliwatt'),
  dBW: plain('dBW', 'decibel-watt'),
  dBi: same('dBi', 'decibels over an isotropic radiator'),
  dBd: same('dBd', 'decibels over a half-wave dipole'),
  kW: plain('kW', 'kilowatt'),
  W: plain('W', 'watt'),
  mW: plain('mW', 'milliwatt'),
  uW: { ...plain('\u00b5W', 'microwatt'), ascii: 'uW' },
  nW: plain('nW', 'nanowatt'),
  pW: plain('pW', 'picowatt'),
  V: plain('V', 'volt'),
  mV: plain('mV', 'millivolt'),
  uV: { ...plain('\u00b5V', 'microvolt'), ascii: 'uV' },
  nV: plain('nV', 'nanovolt'),
  Vrms: same('V RMS', 'volts RMS'),
  Vpp: same('Vpp', 'volts peak to peak'),
  Vp: same('V peak', 'volts peak'),
  ohm: { ...plain('\u03a9', 'ohm'), ascii: 'ohm' },
  kohm: { ...plain('k\u03a9', 'kiloohm'), ascii: 'kohm' },
  A: plain('A', 'ampere'),
  mA: plain('mA', 'milliampere'),
  percent: same('%', 'percent'),
  ppm: same('ppm', 'parts per million'),
  K: plain('K', 'kelvin'),
  degC: { shown: '\u00b0C', ascii: 'deg C', one: 'degree Celsius', several: 'degrees Celsius' },
  kHz: same('kHz', 'kilohertz'),
  MHz: same('MHz', 'megahertz'),
  GHz: same('GHz', 'gigahertz'),
  um: { ...plain('\u00b5m', 'micrometre'), ascii: 'um' },
  nm: plain('nm', 'nanometre'),
  mm: plain('mm', 'millimetre'),
  m: plain('m', 'metre'),
  s: plain('s', 'second'),
  ns: plain('ns', 'nanosecond'),
  J: plain('J', 'joule'),
  N: plain('N', 'newton'),
  kg: plain('kg', 'kilogram'),
  mg: plain('mg', 'milligram'),
  none: same('', ''),
});

/** Names of the units that text can be made of. `none` is a bare number. */
export type UnitName = keyof ReturnType<typeof table>;

let units: Readonly<Record<UnitName, UnitText>> | undefined;

/** The unit in one style. `number` is the number's own text without its sign: `1` alone takes the singular. */
export function unitText(style: Style, unit: UnitName, number: string): string {
  units ??= table();
  const text = units[unit];
  if (style === 'spoken') return number === '1' ? text.one : text.several;
  return baseOf(style) === 'ascii' ? (text.ascii ?? text.shown) : text.shown;
}

/** Names of all units. */
export function unitNames(): readonly UnitName[] {
  units ??= table();
  return Object.keys(units) as UnitName[];
}

/** Whether `name` is the name of a unit. */
export function isUnitName(name: string): name is UnitName {
  units ??= table();
  return Object.hasOwn(units, name);
}
