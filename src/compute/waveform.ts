/** A wave even about zero whose peak, RMS and rectified average stand in fixed ratios. */
export type Waveform = 'sine' | 'square' | 'triangle';

/** RMS and rectified average of each wave, for a peak of 1. */
function ofUnitPeak(waveform: Waveform): { rms: number; average: number } {
  switch (waveform) {
    case 'sine':
      return { rms: Math.SQRT1_2, average: 2 / Math.PI };
    case 'square':
      return { rms: 1, average: 1 };
    case 'triangle':
      return { rms: 1 / Math.sqrt(3), average: 1 / 2 };
  }
}

/** Peak over RMS: sine 1.414, square 1, triangle 1.732. Source: integral of the square over one period. */
export function crestFactor(waveform: Waveform): number {
  return 1 / ofUnitPeak(waveform).rms;
}

/** RMS over rectified average: sine 1.111, square 1, triangle 1.155. */
export function formFactor(waveform: Waveform): number {
  const { rms, average } = ofUnitPeak(waveform);
  return rms / average;
}

/**
 * What an average-responding meter with a scale made for sines shows, over the true RMS: 1 for a sine, 1.111 for a
 * square wave (+11 %), 0.962 for a triangle (-3.8 %).
 */
export function averageMeterRatio(waveform: Waveform): number {
  return formFactor('sine') / formFactor(waveform);
}
