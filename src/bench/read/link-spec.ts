import type { EntryForm, LinkTextKey } from '../../sheet/entries.ts';
import type { LinkUnit, MethodKind } from '../../sheet/method.ts';
import type { KindName } from '../../text/read/kind.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';

const count = { kind: 'number', min: 0, max: 1e6, decimals: 0 } as const;
const share = { kind: 'percent', min: 0, max: 90, decimals: 0 } as const;

/** What may be typed into a link's number fields other than those that follow its unit or its method. */
export const LINK_SPECS = {
  loss: { kind: 'loss', min: -60, max: 120, decimals: 0 },
  factor: { kind: 'number', min: 1, max: 10, decimals: 0 },
  probability: { kind: 'percent', min: 50, max: 99.99, decimals: 2 },
  freedom: { kind: 'number', min: 1, max: 1e6, decimals: 0 },
  count: { kind: 'number', min: 2, max: 1e6, decimals: 0, whole: true },
  top: { kind: 'number', min: 0, max: 1, decimals: 0 },
  rated: { kind: 'power', min: 0.001, max: 100_000, decimals: 3 },
  // 70 % leaves one degree of freedom (GUM G.4.2), the fewest that a statement may bring
  reliability: { kind: 'percent', min: 1, max: 70, decimals: 0 },
  sourceSwr: { kind: 'number', min: 1, max: 100, decimals: 0 },
  loadSwr: { kind: 'number', min: 1, max: 100, decimals: 0 },
  ofReading: share,
  ofScale: share,
  digits: count,
  perKelvin: share,
  coldest: { kind: 'celsius', min: -50, max: 100, decimals: 0 },
  warmest: { kind: 'celsius', min: -50, max: 100, decimals: 0 },
  temperature: { kind: 'celsius', min: -50, max: 100, decimals: 0 },
  perYear: share,
  years: { kind: 'number', min: 0, max: 100, decimals: 0 },
} as const satisfies Partial<Record<LinkTextKey, ReadSpec>>;

/** Kind and largest half-width of what a unit states. */
const AMOUNTS: Readonly<Record<LinkUnit, { readonly kind: KindName; readonly max: number }>> = {
  dB: { kind: 'halfWidthDb', max: 20 },
  percentOfPower: share,
  percentOfVolts: share,
  percentOfResistance: share,
  percentOfDcVolts: share,
  percentOfDcAmperes: share,
  voltsPeakToPeak: { kind: 'halfWidthVpp', max: 10_000 },
  volts: { kind: 'volts', max: 10_000 },
  dcVolts: { kind: 'volts', max: 10_000 },
  dcAmperes: { kind: 'halfWidthAmperes', max: 1000 },
  kelvinRf: { kind: 'kelvin', max: 1000 },
  kelvinDc: { kind: 'kelvin', max: 1000 },
};

/** Half-widths and uncertainties of a link, by its unit. */
export const amountSpec = (unit: LinkUnit): ReadSpec => {
  const { kind, max } = AMOUNTS[unit];
  return { kind, min: 0, max, decimals: 0 };
};

/** Ends of lopsided limits, by the link's unit. */
export const endSpec = (unit: LinkUnit): ReadSpec => {
  const { kind, max } = AMOUNTS[unit];
  return { kind: unit === 'dB' ? 'gain' : kind, min: -max, max, decimals: 0 };
};

/** Kind of what terms of a limit are stated in: that of the method's reading. */
const TERM_KINDS: Readonly<Record<MethodKind, KindName>> = {
  padsIntoMeter: 'power',
  oscilloscope: 'halfWidthVpp',
  peakDetector: 'volts',
  inLine: 'power',
  dcSubstitution: 'volts',
};

/** Full scale, step of a digit and floor of a sum of terms, by the method. */
export const termSpec = (method: MethodKind): ReadSpec => ({
  kind: TERM_KINDS[method],
  min: 0,
  max: 100_000,
  decimals: 0,
});

/** Which texts a form of statement needs beside each other, in the order in which they are typed. */
export const FORM_KEYS: Readonly<Record<EntryForm, readonly LinkTextKey[]>> = {
  rectangular: ['amount'],
  triangular: ['amount'],
  arcsine: ['amount'],
  trapezoid: ['amount', 'top'],
  uncertainLimits: ['amount', 'doubt'],
  asymmetric: ['lower', 'upper'],
  expanded: ['amount', 'factor', 'freedom'],
  coverage: ['amount', 'probability', 'freedom'],
  corrections: ['table', 'factor', 'freedom'],
  standard: ['amount', 'freedom'],
  readings: ['amount', 'count'],
  displayStep: ['amount'],
  halfWithin: ['amount'],
  terms: [
    'ofReading',
    'ofScale',
    'fullScale',
    'digits',
    'step',
    'floor',
    'perKelvin',
    'coldest',
    'warmest',
    'temperature',
    'perYear',
    'years',
  ],
  swr: ['sourceSwr', 'loadSwr'],
};

/** Forms whose unit follows from the method or from what they are: no unit is chosen. */
const FORMS_WITHOUT_UNIT = ['terms', 'swr'] as const satisfies readonly EntryForm[];

/** Whether a unit is chosen for a form. */
export const hasUnit = (form: EntryForm): boolean => !FORMS_WITHOUT_UNIT.some((other) => other === form);
