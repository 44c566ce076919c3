import { type Envelope, peakEnvelopeOfMean } from './envelope.ts';
import { mismatchLimits } from './mismatch-limits.ts';
import { type GainDb, gainDb, type PowerW, rangeError } from './quantity.ts';
import { mismatchLossDb } from './reflection.ts';

/**
 * Which average is meant (ITU Radio Regulations 1.156 to 1.159): over a time long against the modulation, over one cycle
 * at the crest of the envelope, or without modulation.
 */
export type PowerKind = 'mean' | 'peakEnvelope' | 'carrier';

/**
 * Which power at the plane is meant: what this very load takes (`delivered`), what an ideal 50 ohm load would take
 * (`intoIdeal`), the wave that travels towards the load (`incident`), or forward less reflected (`net`).
 */
export type PowerDelivery = 'delivered' | 'intoIdeal' | 'incident' | 'net';

/** What is to be measured: comes first and fixes the signs. */
export interface Measurand {
  readonly kind: PowerKind;
  readonly delivery: PowerDelivery;
  /** Id of the plane, for example the transmitter's socket. */
  readonly plane: string;
  /** Held down, or keyed and modulated in a way whose mean is known (see `meanOverPeakEnvelope`). */
  readonly keying: 'keyDown' | Envelope;
  readonly conditions?: MeasurandConditions;
}

/** What the power may hang on, and so belongs to what is meant. */
export interface MeasurandConditions {
  readonly frequencyHz?: number;
  readonly supplyV?: number;
  readonly temperatureC?: number;
}

/**
 * The power that is meant, from the mean power that a thermal meter shows while the transmitter is keyed as the measurand
 * says: as it is for the mean, divided by the mean's share of the peak for PEP. Carrier power is read key down only.
 * @throws RangeError for carrier power of a keyed transmitter: what it would be without modulation is then not known.
 * Source: ITU Radio Regulations 1.157 to 1.159.
 */
export function meantPower({
  measurand: { kind, keying },
  mean,
}: {
  measurand: Measurand;
  mean: PowerW;
}): PowerW {
  if (keying === 'keyDown' || kind === 'mean') return mean;
  if (kind === 'carrier')
    throw rangeError({ where: 'meantPower', wish: 'carrier power must be read key down', got: keying });
  return peakEnvelopeOfMean({ mean, envelope: keying });
}

/**
 * Limits of what mismatch adds to the level of the incident wave that a terminating meter shows (its calibration factor
 * applied), to get the power that is meant. Into an ideal load: 20 lg|1 - Gs Gl|, phase unknown. Delivered or net: a known
 * loss 10 lg(1 - Gl^2), where the source drops out. Incident: nothing.
 * @param source reflection magnitude of the transmitter, 0 to below 1 (judged, as a rule).
 * @param load reflection magnitude of what is connected to it, 0 to below 1.
 * @throws RangeError outside these ranges.
 * Source: signal-flow analysis of source and load.
 */
export function mismatchCorrection({
  delivery,
  source,
  load,
}: {
  delivery: PowerDelivery;
  source: number;
  load: number;
}): { lower: GainDb; upper: GainDb } {
  switch (delivery) {
    case 'intoIdeal':
      return mismatchLimits({ source, load });
    case 'delivered':
    case 'net': {
      const correction = gainDb(0 - mismatchLossDb(load));
      return { lower: correction, upper: correction };
    }
    case 'incident':
      return { lower: gainDb(0), upper: gainDb(0) };
  }
}
