import type { MethodKind, ShownPower } from '../../sheet/method.ts';

/** Words of a method: its name, when it is the right one, and what to be careful of. */
interface MethodWords {
  readonly name: string;
  readonly when: string;
  readonly caution: string;
}

/** Words of the methods and of what each asks for once. The cautions are the usual ones (common practice). */
export const setupStrings = {
  methods: {
    padsIntoMeter: {
      name: 'Pads into a power meter or receiver',
      when: 'When an instrument shows a level, and pads bring the transmitter down to what it stands.',
      caution:
        'The first pad must stand the full power, and the input what is left of it, also on the day a pad is forgotten: “Before you key the transmitter” works out both.',
    },
    oscilloscope: {
      name: 'Oscilloscope across a load',
      when: 'When the signal is a clean sine at less than a third of the bandwidth, and there is a good load.',
      caution:
        'A 50 Ω input commonly stands 5 V RMS at most, which is half a watt: the power belongs into a load of its own. The ground clip is mains earth and goes to nothing but earth.',
    },
    peakDetector: {
      name: 'Peak detector and voltmeter',
      when: 'When there is a diode, a load and a multimeter, and the power is above some 50 mW.',
      caution:
        'The load must stand the full power, and the diode twice the peak voltage in reverse. RF burns: key off before you touch anything.',
    },
    inLine: {
      name: 'Meter in the line',
      when: 'When forward and reflected power are to be watched into whatever load there is, well up the scale.',
      caution:
        'The load behind the meter must stand the full power for as long as the key is down: never key without it, and never unplug while keyed.',
    },
    dcSubstitution: {
      name: 'The same heat from DC',
      when: 'When you can wait for a load to warm up, first with RF, then with DC that a multimeter measures.',
      caution:
        'The load gets hot and stays hot: do not leave it alone, limit the current, and never put DC and RF on it together.',
    },
  } satisfies Readonly<Record<MethodKind, MethodWords>>,
  methodQuestion: 'Which way from the socket to a power',
  always:
    'Into a load, never on the air; key off before you reconnect. Licence, local rules and the equipment’s own manual come first.',
  more: {
    padsIntoMeter: 'What it shows, and between which levels',
    oscilloscope: '',
    peakDetector: 'Where the drop comes from',
    inLine: 'What it shows, and what it stands',
    dcSubstitution: '',
  } satisfies Readonly<Record<MethodKind, string>>,
  labels: {
    method: 'How',
    shows: 'It shows',
    load: 'Load resistance',
    scopeBandwidth: 'Bandwidth of the oscilloscope',
    probeBandwidth: 'Bandwidth of the probe',
    terminated: 'The line ends in a load',
    drop: 'Diode drop',
    curve: 'The drop is known',
    forwardScale: 'Full scale, forward',
    forwardPercent: 'Limits of that scale',
    reflectedScale: 'Full scale, reflected',
    reflectedPercent: 'Limits of that scale, too',
    floor: 'Lowest level it holds at',
    largest: 'Highest level it holds at',
    damage: 'Input stands at most',
    largestPeak: 'Input stands at most',
    largestReverse: 'Diode stands in reverse',
  },
  help: {
    shows: 'Matters for a keyed or modulated signal only.',
    load: 'In Ω, as you measured it at DC; what it may be off by is a link.',
    scopeBandwidth: 'In MHz, from its data sheet.',
    probeBandwidth: 'In MHz; leave it empty for a cable straight into the input.',
    terminated: 'Without one the trace may show twice the voltage, which is no power.',
    drop: 'In V, added to what the voltmeter shows: about 0.5 V for a small silicon diode.',
    curve: 'At low power no fixed drop is right, and only a curve will do.',
    forwardScale: 'In W: the range that was read.',
    forwardPercent: 'In % of full scale, from its data sheet.',
    reflectedScale: 'In W: the range that was read.',
    reflectedPercent: 'In % of full scale, from its data sheet.',
    floor: 'In dBm, W or mW; leave it empty if you do not know it.',
    largest: 'In dBm, W or mW; leave it empty if you do not know it.',
    damage: 'In dBm, W or mW, from its own manual; leave it empty if you do not know it.',
    largestPeak: 'In V peak, from its own manual; leave it empty if you do not know it.',
    largestReverse: 'In V, from its data sheet; leave it empty if you do not know it.',
  },
  shown: {
    mean: 'the mean power',
    peakEnvelope: 'the peak envelope power',
  } satisfies Readonly<Record<ShownPower, string>>,
  terminations: { yes: 'yes, beside the probe or in the input', no: 'no, the input is set to 1 MΩ alone' },
  curves: { yes: 'from a curve of this detector at DC', no: 'as one fixed drop' },
} as const;
