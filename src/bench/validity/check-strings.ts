import type { CheckKey } from '../../sheet/check-keys.ts';
import type { MethodKind } from '../../sheet/method.ts';
import type { CHECKS_OF, CheckKind } from './check-kinds.ts';

/** Why a check is offered for a method: one sentence for each that is. */
type Reasons = {
  readonly [Method in MethodKind]: Readonly<Record<(typeof CHECKS_OF)[Method][number], string>>;
};

/** Finished texts of a drift. */
interface DriftWords {
  readonly total: string;
  readonly sure: string;
  readonly minutes: string;
  readonly allowed: string;
}

const connectors =
  'A connector that does not come back to the same contact scatters more than the readings of one connection show.';
const drift =
  'Supply, heat and time change what a transmitter gives and what an instrument shows; a line through readings against time says how much.';

/** Words of the validity checks. Numbers come in as finished text. */
export const checkStrings = {
  names: {
    step: 'One more known pad',
    floor: 'Reading without signal',
    reconnection: 'Connectors off and on again',
    drift: 'Warm-up and key-down drift',
    steady: 'Waiting until it is steady',
    harmonics: 'Harmonics',
  } satisfies Readonly<Record<CheckKind, string>>,
  why: {
    padsIntoMeter: {
      step: 'A meter or receiver that is overloaded, or near its floor, does not follow a known step.',
      floor: 'Noise and leakage add their power to every reading.',
      reconnection: connectors,
      drift,
      harmonics:
        'A meter for power adds the power of harmonics. A tuned receiver leaves them out, but may be overloaded by them.',
    },
    oscilloscope: {
      step: 'An input or probe that is driven too far flattens the crest; a known step shows it.',
      floor: 'Hum, noise and what the ground lead picks up add their volts to the trace.',
      reconnection:
        'Probe, ground lead and connectors each make contact anew, and the lead never lies the same way twice.',
      drift,
      harmonics:
        'The crest of a wave with harmonics is not that of its fundamental, and may be higher or lower.',
    },
    peakDetector: {
      step: 'A diode drop that was taken wrong counts for more at a lower level: the reading then does not follow a known step.',
      floor: 'An offset of the voltmeter, or what the detector picks up, adds its volts.',
      reconnection: connectors,
      drift,
      harmonics: 'A peak detector follows the crest, which harmonics may raise or lower.',
    },
    inLine: {
      floor: 'A needle that does not rest on zero is wrong by as many watts everywhere on the scale.',
      reconnection: connectors,
      drift,
      harmonics:
        'The detectors of an in-line meter are diodes and follow the crest, and its coupler may favour the harmonics.',
    },
    dcSubstitution: {
      steady: 'Heat takes its time: read too early, the rise belongs to no power at all.',
      floor: 'A room or a load that is still warming up by itself adds to the rise.',
      reconnection: connectors,
      harmonics: 'A load is warmed by harmonics as well as by the carrier.',
    },
  } satisfies Reasons,
  labels: {
    stepWithout: 'Reading without it',
    stepWith: 'Reading with it',
    stepPad: 'That pad, in dB',
    stepAllowed: 'May be off by, in dB',
    off: 'Transmitter off',
    offAllowed: 'It may add, in dB',
    reconnections: 'Each connected anew',
    reconnectionsAllowed: 'Scatter may be, in dB',
    warmUpMinutes: 'Minutes',
    warmUpLevels: 'Readings at these minutes',
    warmUpAllowed: 'Drift may be, in dB',
    secondHarmonic: 'Second harmonic, in dB',
    thirdHarmonic: 'Third harmonic, in dB',
    harmonicsAllowed: 'They may do, in dB',
  } satisfies Readonly<Record<CheckKey, string>>,
  help: {
    stepAllowed: 'What the pad’s data sheet allows, and the scatter of two readings.',
    off: 'What is shown then.',
    reconnections: 'Readings, key off before each; five say something.',
    warmUpMinutes: 'Since switching on or keying down, one a line.',
    warmUpLevels: 'As many as minutes, in the same order.',
    secondHarmonic: 'Against the carrier, so below 0; behind the filter, if there is one.',
  } satisfies Readonly<Partial<Record<CheckKey, string>>>,
  units: {
    padsIntoMeter: 'In dBm, W or mW.',
    oscilloscope: 'In V from peak to peak.',
    peakDetector: 'In V DC.',
    inLine: 'In W.',
    dcSubstitution: 'In K.',
  } satisfies Readonly<Record<MethodKind, string>>,
  /** What an empty allowance stands for. */
  usual: (allowed: string): string => `Empty: ${allowed}, a third of the standard uncertainty.`,
  noUsual: 'Needed, as long as there is no result to compare it with.',
  statuses: {
    notMade: 'not made',
    begun: 'begun, not made',
    passed: 'passed',
    failed: 'failed',
    unclear: 'says nothing yet',
  },
  missing: (fields: string): string => `Still missing: ${fields}.`,
  faulty: 'Something in it cannot be used yet.',
  line: ({ name, status }: { name: string; status: string }): string => `${name}: ${status}`,
  says: {
    step: ({ moved, step, allowed }: { moved: string; step: string; allowed: string }): string =>
      `${step} more moved the reading by ${moved}; ${allowed} of difference was allowed.`,
    stepOutcome: {
      passed: '',
      'moved-too-little':
        'It moved too little: something is overloaded without the pad, or near its floor with it.',
      'moved-too-much': 'It moved too much: a bad connection, or a pad that is not what it says.',
    },
    nothing: 'Nothing is shown without a signal.',
    floor: ({ margin, adds, allowed }: { margin: string; adds: string; allowed: string }): string =>
      `The reading stands ${margin} above what is shown without a signal, which adds up to ${adds}; ${allowed} was allowed.`,
    atFloor: 'The reading is no higher than what is shown without a signal: nothing was measured.',
    reconnection: ({
      count,
      s,
      largest,
      allowed,
    }: {
      count: string;
      s: string;
      largest: string;
      allowed: string;
    }): string =>
      `${count} connections scatter by ${s} (standard deviation) and differ by ${largest} at most; ${allowed} of scatter was allowed.`,
    few: 'Five connections or more are needed to say that it is good.',
    drift: ({ total, sure, minutes, allowed }: DriftWords): string =>
      `The reading moved by ${total} (${sure}) in ${minutes} ${minutes === '1' ? 'minute' : 'minutes'}; ${allowed} was allowed.`,
    lost: 'The scatter of these readings leaves open whether that is kept: take more of them.',
    harmonics: {
      mean: ({ upper, allowed }: { upper: string; allowed: string }): string =>
        `They raise the power by ${upper} at most; ${allowed} was allowed.`,
      peak: ({ both, allowed }: { both: string; allowed: string }): string =>
        `They move a reading of the crest by ${both} at most, at a phase that nobody knows; ${allowed} was allowed.`,
    },
  },
  /** What to do about a check that failed. */
  remedy: {
    step: 'Read with the pad left in, or find what is overloaded.',
    floor: 'Shield, find what leaks in, or read at a higher level, but never beyond what the input stands.',
    reconnection: 'Count this scatter as a link of its own, or mend the connector.',
    drift: 'Wait until it is over, or count half of it to either side as a link.',
    steady: 'Wait longer, and read again.',
    harmonics: 'Put a filter in, or count these limits as a link of their own.',
  } satisfies Readonly<Record<CheckKind, string>>,
  failed: (name: string): string => `Check failed: ${name}.`,
  tooFew: (least: number): string => `${least} readings or more are needed here.`,
  tooMany: (most: number): string => `More than ${most}: a few readings are enough for this check.`,
  unequal: ({ minutes, levels }: { minutes: number; levels: number }): string =>
    `${levels} readings stand against ${minutes} minutes: one reading belongs to each.`,
  oneTime: 'All minutes are the same: a drift takes time.',
} as const;
