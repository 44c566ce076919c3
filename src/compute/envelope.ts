import { finite, type PowerW, powerW, rangeError } from './quantity.ts';

/** Forms of keying and of envelope whose mean power stands in a fixed ratio to the peak envelope power. */
export type Envelope = 'steadyCarrier' | 'stringOfDits' | 'parisWord' | 'twoEqualTones';

/**
 * Mean power over peak envelope power: steady carrier 1; a string of dits 1/2 (one unit on, one off); the word PARIS
 * 22/50 (22 of its 50 units are on); two equal tones 1/2.
 * Source: ITU Radio Regulations 1.157 and 1.158 (definitions); ITU-R M.1677 (Morse timing); common practice.
 */
export function meanOverPeakEnvelope(envelope: Envelope): number {
  switch (envelope) {
    case 'steadyCarrier':
      return 1;
    case 'stringOfDits':
    case 'twoEqualTones':
      return 1 / 2;
    case 'parisWord':
      return 22 / 50;
  }
}

/** Mean power of a signal with the given envelope, from its peak envelope power. */
export function meanOfPeakEnvelope({
  peakEnvelope,
  envelope,
}: {
  peakEnvelope: PowerW;
  envelope: Envelope;
}): PowerW {
  return powerW(peakEnvelope * meanOverPeakEnvelope(envelope));
}

/** Peak envelope power of a signal with the given envelope, from its mean power. */
export function peakEnvelopeOfMean({ mean, envelope }: { mean: PowerW; envelope: Envelope }): PowerW {
  return powerW(mean / meanOverPeakEnvelope(envelope));
}

/**
 * Powers of a carrier amplitude-modulated by one tone to a depth of 0 to 1: mean P(1 + m^2/2), peak envelope P(1 + m)^2.
 * @throws RangeError for a depth outside 0 to 1.
 * Source: ITU Radio Regulations 1.157 to 1.159 (definitions); trigonometry.
 */
export function amplitudeModulated({ carrier, depth }: { carrier: PowerW; depth: number }): {
  mean: PowerW;
  peakEnvelope: PowerW;
} {
  const m = finite('amplitudeModulated', 'depth', depth);
  if (m < 0 || m > 1)
    throw rangeError({ where: 'amplitudeModulated', wish: 'depth must be from 0 to 1', got: depth });
  return { mean: powerW(carrier * (1 + (m * m) / 2)), peakEnvelope: powerW(carrier * (1 + m) ** 2) };
}
