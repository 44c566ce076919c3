import type { Waveform } from '#compute';

/** A wave of unit peak at a moment, in periods from a rising zero: between -1 and 1. */
export function waveAt(wave: Waveform, periods: number): number {
  const phase = periods - Math.floor(periods);
  switch (wave) {
    case 'sine':
      return Math.sin(2 * Math.PI * phase);
    case 'square':
      return phase < 0.5 ? 1 : -1;
    case 'triangle':
      return 1 - 4 * Math.abs(((phase + 0.25) % 1) - 0.5);
  }
}

/** Moments at which a wave is drawn, in periods: its corners, or even steps where it is round. */
function momentsOf(wave: Waveform, periods: number): number[] {
  const perPeriod = wave === 'sine' ? 48 : 4;
  const steps = Array.from({ length: periods * perPeriod + 1 }, (_, index) => index / perPeriod);
  if (wave !== 'square') return steps;
  // A square wave stands still between its edges and is in two places at each.
  const edges = Array.from({ length: 2 * periods + 1 }, (_, index) => index / 2);
  return edges.flatMap((edge, index) => (index === 0 || index === 2 * periods ? [edge] : [edge, edge]));
}

/** Points of a wave of unit peak, in order: moments in periods and values. */
export function wavePoints(wave: Waveform, periods: number): readonly { at: number; value: number }[] {
  const moments = momentsOf(wave, periods);
  if (wave !== 'square') return moments.map((at) => ({ at, value: waveAt(wave, at) }));
  return moments.map((at, index) => ({ at, value: waveAt(wave, Math.floor(index / 2) / 2) }));
}
