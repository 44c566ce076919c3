import {
  amplitudeRatioToDb,
  averageMeterRatio,
  combinedBandwidth,
  shuntCapacitanceLossDb,
  singlePoleLossDb,
  type Waveform,
} from '#compute';

/** Meters that join a circuit: two for direct voltage, one on its AC range, and two probes of an oscilloscope. All of them invented. */
export const METERS = ['digital', 'needle', 'alternating', 'probe1', 'probe10'] as const;
export type MeterKind = (typeof METERS)[number];

/** What a meter is joined to. Each meter looks at some of it. */
export interface Joining {
  readonly meter: MeterKind;
  /** Resistance that the voltage comes from, as seen by a meter for direct voltage. */
  readonly sourceKohm: number;
  readonly waveform: Waveform;
  readonly kilohertz: number;
  readonly megahertz: number;
  /** Source and load at the point that a probe touches, one as large as the other. */
  readonly resistanceOhm: number;
}

/** The club's divider, and a needle meter on it. */
export const clubJoining = (): Joining => ({
  meter: 'needle',
  sourceKohm: 50,
  waveform: 'sine',
  kilohertz: 0.05,
  megahertz: 3.58,
  resistanceOhm: 50,
});

/** Input resistance of the meters for direct voltage, in kiloohms: a needle of 20 kiloohms for each volt, on its range of 10 V. */
export const METER_KOHM = { digital: 10_000, needle: 200 } as const;
/** What two of them may be wrong by besides, in percent of the reading. */
const STATED_PERCENT = { digital: 0.5, alternating: 1 } as const;
/** The needle's is in percent of its range, which is twice the voltage that was there: so it is of that, whatever is shown. */
const NEEDLE_PERCENT_OF_RANGE = 2.5;
const RANGE_OVER_THERE = 2;
/** Highest frequency for which the AC range is stated, in kilohertz. */
export const AC_MOST_KHZ = 1;
/** Capacitance at the tip of each probe, and its bandwidth; the oscilloscope's own. */
export const PROBES = {
  probe1: { capacitanceF: 100e-12, bandwidthMhz: 6 },
  probe10: { capacitanceF: 12e-12, bandwidthMhz: 150 },
} as const;
export const SCOPE_MHZ = 100;
/** Share of the bandwidth above which no correction can be stood behind: common practice. */
const LARGEST_RATIO = 0.3;

export type Probe = keyof typeof PROBES;
const isProbe = (meter: MeterKind): meter is Probe => meter in PROBES;

/** Bandwidth of oscilloscope and probe together, in megahertz. */
export const bandwidthMhz = (probe: Probe): number =>
  combinedBandwidth([SCOPE_MHZ, PROBES[probe].bandwidthMhz]);

/** The highest frequency up to which a meter can be used; in its own unit, infinite where frequency does not matter. */
export function mostFrequency(meter: MeterKind): number {
  if (isProbe(meter)) return LARGEST_RATIO * bandwidthMhz(meter);
  return meter === 'alternating' ? AC_MOST_KHZ : Number.POSITIVE_INFINITY;
}

/** What a meter shows less what was there before it joined; the band is where that may lie by what is stated of the meter. */
export type JoinedOutcome =
  | {
      readonly inRange: true;
      readonly unit: 'percent' | 'dB';
      /** What joining does, or the waveform: known, and always of this sign. */
      readonly error: number;
      readonly lower: number;
      readonly upper: number;
    }
  | { readonly inRange: false; readonly most: number; readonly unit: 'kHz' | 'MHz' };

/** Percent of the reading as percent of what was there. */
const ofReading = (error: number, statedPercent: number): number => (statedPercent / 100) * (100 + error);

/** A band about what is shown. */
function about(error: number, half: number): JoinedOutcome {
  return { inRange: true, unit: 'percent', error, lower: error - half, upper: error + half };
}

/** A meter for direct voltage divides what it measures: Rm/(Rs + Rm). */
export const dividedPercent = (sourceKohm: number, meterKohm: number): number =>
  (-100 * sourceKohm) / (sourceKohm + meterKohm);

function divided(meter: 'digital' | 'needle', { sourceKohm }: Joining): JoinedOutcome {
  const error = dividedPercent(sourceKohm, METER_KOHM[meter]);
  return about(
    error,
    meter === 'digital'
      ? ofReading(error, STATED_PERCENT.digital)
      : NEEDLE_PERCENT_OF_RANGE * RANGE_OVER_THERE,
  );
}

function probed(probe: Probe, { megahertz, resistanceOhm }: Joining): JoinedOutcome {
  const most = mostFrequency(probe);
  if (megahertz > most) return { inRange: false, most, unit: 'MHz' };
  const error = -shuntCapacitanceLossDb({
    capacitanceF: PROBES[probe].capacitanceF,
    frequencyHz: megahertz * 1e6,
    resistanceOhm,
  });
  const rollOff = singlePoleLossDb(megahertz / bandwidthMhz(probe));
  return { inRange: true, unit: 'dB', error, lower: error - rollOff, upper: error };
}

/** What comes of joining. Above the frequency that is stated, no number: out of range. */
export function joinedOf(joining: Joining): JoinedOutcome {
  const { meter } = joining;
  if (isProbe(meter)) return probed(meter, joining);
  if (meter !== 'alternating') return divided(meter, joining);
  if (joining.kilohertz > AC_MOST_KHZ) return { inRange: false, most: AC_MOST_KHZ, unit: 'kHz' };
  const error = 100 * (averageMeterRatio(joining.waveform) - 1);
  return about(error, ofReading(error, STATED_PERCENT.alternating));
}

/** An error of volts in percent, in decibels. */
export const percentOfVoltsInDb = (percent: number): number => amplitudeRatioToDb(1 + percent / 100);
