import type { GainDb, LevelDbm, Ohms, PowerW, VoltsPeak } from './quantity.ts';

/** Whether a stated limit is kept; `unrated` where none was stated. A value on the limit is within. */
export type CautionStatus = 'within' | 'exceeded' | 'unrated';

/** What a part may take: power into its input (as most data sheets say) or heat in its body. */
export interface PowerRating {
  readonly power: PowerW;
  readonly of: 'input' | 'heat';
}

/** A link between transmitter and instrument, as cautions see it. Gains are negative for a pad or cable. */
export interface CautionLink {
  readonly id: string;
  /** Gain with the lowest attenuation that its tolerance allows: what the parts behind it may get. */
  readonly highestGain: GainDb;
  /** Gain with the highest attenuation that its tolerance allows: it then keeps most heat itself. */
  readonly lowestGain: GainDb;
  readonly rating?: PowerRating;
  /** True if it may be forgotten or fail: what arrives at the input is then told without it, too. */
  readonly removable: boolean;
}

/** What stands behind the last link. */
export interface CautionInstrument {
  /** The resistance that takes the power: the input's own, or the load that it sits across. */
  readonly resistance: Ohms;
  /** Level at which the input may be damaged. */
  readonly damageLevel?: LevelDbm;
  /** Largest peak voltage that the input may see. */
  readonly largestPeak?: VoltsPeak;
  /** For a peak detector: the largest reverse voltage that its diode may see, where stated. */
  readonly detector?: { readonly largestReverse?: VoltsPeak };
}

/** Upper powers of the transmitter: mean (for heat) and peak envelope (for levels and volts). */
export interface UpperPowers {
  readonly mean: PowerW;
  readonly peakEnvelope: PowerW;
}

/** A pad's heat with the whole chain in place. */
export interface PadHeat {
  readonly code: 'padHeat';
  readonly id: string;
  readonly incident: PowerW;
  readonly heat: PowerW;
  readonly rating: PowerRating | undefined;
  readonly status: CautionStatus;
}

/** The level at the instrument's input. */
export interface InputLevel {
  readonly code: 'inputLevel';
  /** Id of the link left out; undefined for the whole chain. */
  readonly without: string | undefined;
  readonly level: LevelDbm;
  readonly damageLevel: LevelDbm | undefined;
  /** Damage level less level, negative where it is exceeded; undefined where none was stated. */
  readonly margin: GainDb | undefined;
  readonly status: CautionStatus;
}

/** The peak voltage at the input, or the reverse voltage on a detector's diode. */
export interface InputVolts {
  readonly code: 'inputPeak' | 'diodeReverse';
  /** Id of the link left out; undefined for the whole chain. */
  readonly without: string | undefined;
  readonly volts: VoltsPeak;
  readonly largest: VoltsPeak | undefined;
  readonly status: CautionStatus;
}

/** A caution as a code with its numbers; words are made elsewhere. */
export type Caution = PadHeat | InputLevel | InputVolts;
