import { type Calibration, type CalibrationFault, calibrationOf } from './calibration.ts';
import type { Checked } from './checked.ts';
import { type PadFound, padFromDc, padFromSwap } from './pad.ts';

/** What the page shows: a calibration of an instrument, the attenuation of a part, or why there is neither. */
export type Outcome =
  | { readonly kind: 'calibration'; readonly calibration: Calibration }
  | { readonly kind: 'part'; readonly part: PadFound }
  | { readonly kind: 'none'; readonly fault: CalibrationFault | 'sums'; readonly because?: string };

function computed(checked: Checked): Outcome {
  if (checked.kind === 'dc') return { kind: 'part', part: padFromDc(checked) };
  if (checked.kind === 'swap') return { kind: 'part', part: padFromSwap(checked) };
  const calibration = calibrationOf(checked);
  return typeof calibration === 'string'
    ? { kind: 'none', fault: calibration }
    : { kind: 'calibration', calibration };
}

/** Never throws: what the sums refuse is told in their own words. */
export function outcomeOf(checked: Checked): Outcome {
  try {
    return computed(checked);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { kind: 'none', fault: 'sums', because: error.message };
  }
}
