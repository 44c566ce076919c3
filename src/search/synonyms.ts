import { fold, wordsOf } from './terms.ts';

/** Names of one and the same thing: whoever asks for one finds the others. From the trade, and common practice all. */
const TRADE: readonly (readonly string[])[] = [
  ['pad', 'attenuator'],
  ['oscilloscope', 'scope', 'CRO'],
  ['dummy load', 'load resistor', 'termination'],
  ['power meter', 'wattmeter'],
  ['coax', 'coaxial cable', 'feeder', 'feed line', 'transmission line'],
  ['standing wave ratio', 'SWR', 'VSWR'],
  ['reflection', 'mismatch', 'reflected power'],
  ['reflection coefficient', 'gamma', 'rho'],
  ['antenna', 'aerial'],
  ['transmitter', 'TX'],
  ['receiver', 'RX'],
  ['peak detector', 'diode detector', 'RF probe'],
  ['root sum square', 'RSS', 'quadrature', 'at right angles'],
  ['bell', 'normal distribution', 'Gaussian', 'Gauss'],
  ['box', 'rectangular distribution', 'uniform distribution'],
  ['simulation', 'Monte Carlo', 'a million times'],
  ['expanded uncertainty', 'coverage interval', 'error bar'],
  ['certificate', 'calibration report'],
  ['specification', 'spec', 'data sheet', 'datasheet'],
  ['RF voltmeter', 'valve voltmeter'],
  ['earth', 'ground'],
  ['thermometer', 'temperature rise'],
  ['in-line meter', 'directional coupler', 'SWR bridge', 'through-line meter'],
  ['peak envelope power', 'PEP'],
  ['crest', 'peak'],
  ['scatter', 'spread', 'standard deviation', 'sigma'],
  ['can’t tell', 'undecided', 'inconclusive'],
  ['ohm', 'Ω'],
  ['decibel', 'dB'],
  ['caution', 'safety', 'danger', 'hazard'],
];

/** A name as it is looked for in a text: its words in one form, with a space at either end. */
const folded = (text: string): string =>
  ` ${wordsOf(text)
    .map((word) => fold(word) ?? '')
    .filter((term) => term !== '')
    .join(' ')} `;

/** Finds, for a text, the other names of what it speaks of; groups beside those of the trade may be added. */
export function otherNames(more: readonly (readonly string[])[] = []): (text: string) => string {
  const groups = [...TRADE, ...more].map((names) => names.map((name) => ({ name, term: folded(name) })));
  return (text) => {
    const within = folded(text);
    return groups
      .filter((names) => names.some(({ term }) => within.includes(term)))
      .flatMap((names) => names.filter(({ term }) => !within.includes(term)).map(({ name }) => name))
      .join('; ');
  };
}

/** Terms to point at beside those that were matched: other names in one word each. */
export function withSynonyms(terms: Iterable<string>): ReadonlySet<string> {
  const all = new Set(terms);
  for (const names of TRADE) {
    const single = names.map((name) => folded(name).trim()).filter((term) => !term.includes(' '));
    if (single.some((term) => all.has(term))) for (const term of single) all.add(term);
  }
  return all;
}
