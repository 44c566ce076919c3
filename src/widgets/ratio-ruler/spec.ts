import type { AddressSpec, ChoiceSpec, NumberSpec } from '../../address/field-spec.ts';

/** Least and greatest ratio on the ruler, in dB, and the steps of its slider. */
export const GAIN = { min: -30, max: 30, step: 0.1, decimals: 2 } as const;

/** What ratios may be typed: as far as the ruler reaches, and so far beyond it as its ends have more digits than a field shows. */
export const TYPED = {
  power: { kind: 'number', min: 0.001, max: 1000, decimals: 3 },
  volts: { kind: 'number', min: 0.0316, max: 31.63, decimals: 4 },
} as const;

/** The ratio that the figure is prepared with: the loss of a pad of 20 dB and one of 6 behind it. */
export const PREPARED_DB = -26;

/** A logarithm taken with the wrong factor before it: 10 for volts, or 20 for watts. */
export type Slip = 'none' | 'tenForVolts' | 'twentyForWatts';

/** Fields of the ruler of ratios in the address. */
export type RatioFields = { readonly gainDb: NumberSpec; readonly slip: ChoiceSpec<Slip> };

/** What an address says about the ruler of ratios; `db` is the ratio, `sl` the slip that is shown beside it. */
export const ratioSpec = (): AddressSpec<RatioFields> => ({
  version: 1,
  fields: {
    gainDb: { type: 'number', key: 'db', label: 'Ratio', kind: 'gain', ...GAIN, default: PREPARED_DB },
    slip: {
      type: 'choice',
      key: 'sl',
      label: 'Slip',
      choices: { none: '0', tenForVolts: '10', twentyForWatts: '20' },
      default: 'none',
    },
  },
});
