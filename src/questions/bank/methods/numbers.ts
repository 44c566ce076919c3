import {
  combinedBandwidth,
  dbToPowerRatio,
  dcPower,
  gainDb,
  ohms,
  peakOfPower,
  percentOfPowerToDb,
  powerOfPeak,
  powerOfPeakToPeak,
  powerW,
  shuntCapacitanceLossDb,
  singlePoleLossDb,
  voltsPeak,
  voltsPeakToPeak,
} from '#compute';
import { intervalText } from '../../../text/interval-text.ts';
import { choices, numeric, other } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { digits, exactly, fixed, given, givenBand, givenPower, power, sig } from '../write.ts';

const scope = 'measuring/oscilloscope-across-a-load';
const detector = 'measuring/peak-detector';
const inLine = 'measuring/in-line-meter';
const heat = 'measuring/radio-watts-from-dc-watts';
const joins = 'measuring/the-meter-joins-the-circuit';
const ofPeak = (volts: number, r = 50): number =>
  powerOfPeak({ peak: voltsPeak(volts), resistance: ohms(r) });
const ofHeight = (volts: number): number =>
  powerOfPeakToPeak({ peakToPeak: voltsPeakToPeak(volts), resistance: ohms(50) });
const beside = (one: number, two: number): number => (one * two) / (one + two);

/** Methods with drawn numbers. */
export const METHOD_NUMBERS: readonly BankQuestion[] = [
  numeric('methods', {
    id: 'detector-to-watts',
    lesson: detector,
    syllabus: ['1.9', '8.1'],
    difficulty: 2,
    given: { dc: steps(2, 22, 0.1), drop: oneOf(0.4, 0.5, 0.55, 0.6) },
    stem: ({ dc, drop }) =>
      `A peak detector across ${given(50, 'ohm')} shows ${given(dc, 'V')} of direct voltage. Its diode takes ${given(drop, 'V')}. How much power is that?`,
    answer: ({ dc, drop }) => ofPeak(dc + drop),
    write: power(),
    wrong: ({ dc, drop }) => [
      [ofPeak(dc), 'drop-forgotten'],
      [ofPeak(dc - drop), 'drop-subtracted'],
      [2 * ofPeak(dc + drop), 'detector-is-rms'],
    ],
    worked: ({ dc, drop }) => [
      `The crest is ${given(dc, 'V')} + ${given(drop, 'V')} = ${exactly(dc + drop, 'V')}.`,
      `Peak volts squared over twice the resistance: (${exactly(dc + drop, 'V')})²/(2 × ${given(50, 'ohm')}) =`,
    ],
    right: 'Add the drop back, square, divide by twice the resistance.',
  }),
  numeric('methods', {
    id: 'detector-expected',
    lesson: detector,
    syllabus: ['1.9', '8.1'],
    difficulty: 2,
    given: {
      watts: oneOf(0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.5, 2, 2.5, 3, 4, 5),
      drop: oneOf(0.45, 0.5, 0.55, 0.6),
    },
    stem: ({ watts, drop }) =>
      `What direct voltage does a peak detector show for ${power(watts < 1 ? 3 : 2)(watts)} in ${given(50, 'ohm')}, if its diode takes ${given(drop, 'V')}?`,
    answer: ({ watts, drop }) => peakOfPower({ power: powerW(watts), resistance: ohms(50) }) - drop,
    write: digits('V', 3),
    typed: { quantity: 'voltsDc', unit: 'V', tolerance: { of: 'share', size: 0.01 } },
    wrong: ({ watts, drop }) => [
      [
        peakOfPower({ power: powerW(watts), resistance: ohms(50) }),
        'drop-forgotten',
        'That is the crest. The capacitor stays below it by the diode’s drop.',
      ],
      [
        peakOfPower({ power: powerW(watts), resistance: ohms(50) }) + drop,
        'drop-subtracted',
        'Here it goes from the crest to the detector: the drop is taken off.',
      ],
      [
        Math.sqrt(watts * 50) - drop,
        'detector-is-rms',
        'A detector follows the crest, √2 times the RMS voltage.',
      ],
    ],
    suits: ({ drop, watts }) => Math.sqrt(watts * 100) > 6 * drop,
    worked: ({ watts, drop }) => {
      const crest = digits('V', 4)(peakOfPower({ power: powerW(watts), resistance: ohms(50) }));
      return [
        `The crest is √(2 × ${givenPower(watts)} × ${given(50, 'ohm')}) = ${crest}.`,
        `The diode takes its drop from it: ${crest} − ${given(drop, 'V')} =`,
      ];
    },
    right: 'The crest, less what the diode keeps.',
  }),
  numeric('methods', {
    id: 'drop-forgotten-in-db',
    lesson: detector,
    difficulty: 3,
    given: { peak: oneOf(2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15), drop: oneOf(0.4, 0.5, 0.6) },
    stem: ({ peak, drop }) =>
      `The crest is ${given(peak, 'V')}, the diode takes ${given(drop, 'V')}, and somebody forgets to add it back. By how many decibels is the result too low?`,
    answer: ({ peak, drop }) => 20 * Math.log10(peak / (peak - drop)),
    write: fixed('dB', 2),
    wrong: ({ peak, drop }) => [
      [10 * Math.log10(peak / (peak - drop)), 'ten-for-twenty'],
      [
        20 * Math.log10((peak + drop) / peak),
        'drop-subtracted',
        'That compares with a crest that is higher by the drop. What is left is lower by it.',
      ],
      [(100 * (drop / peak)) / 10, 'db-as-percent'],
    ],
    suits: ({ peak, drop }) => drop / peak > 0.04,
    worked: ({ peak, drop }) => [
      `Taken for the crest is ${given(peak, 'V')} − ${given(drop, 'V')} = ${exactly(peak - drop, 'V')}.`,
      `20 lg (${given(peak, 'V')}/${exactly(peak - drop, 'V')}) =`,
    ],
    right: 'Volts, so twenty times the logarithm; and the lower the level, the more it is.',
  }),
  numeric('methods', {
    id: 'two-bandwidths',
    lesson: scope,
    difficulty: 3,
    given: { scope: oneOf(50, 70, 100, 150, 200), probe: oneOf(60, 80, 100, 150, 200, 250) },
    stem: ({ scope: own, probe }) =>
      `An oscilloscope of ${given(own, 'MHz')} and a probe of ${given(probe, 'MHz')}: which bandwidth have they together?`,
    answer: ({ scope: own, probe }) => combinedBandwidth([own * 1e6, probe * 1e6]) / 1e6,
    write: digits('MHz', 3),
    wrong: ({ scope: own, probe }) => [
      [Math.min(own, probe), 'bandwidths-smaller-only'],
      [(own + probe) / 2, 'bandwidths-added', 'Two bottlenecks in a row are narrower than either of them.'],
      [
        Math.hypot(own, probe),
        'bandwidths-added',
        'It is the rise times that combine like this. Bandwidths combine by their inverse squares.',
      ],
    ],
    worked: ({ scope: own, probe }) => [
      `The squares of the reciprocals add: 1/√(1/(${given(own, 'MHz')})² + 1/(${given(probe, 'MHz')})²) =`,
    ],
    right: 'By the inverse squares: less than the smaller one.',
  }),
  numeric('methods', {
    id: 'roll-off',
    lesson: scope,
    syllabus: ['8.1', '8.2'],
    difficulty: 3,
    given: { bandwidth: oneOf(20, 25, 50, 60, 100), frequency: oneOf(3.6, 5.4, 7, 10.1, 14, 18, 21, 28) },
    suits: ({ bandwidth, frequency }) => frequency / bandwidth > 0.12 && frequency / bandwidth < 0.3,
    stem: ({ bandwidth, frequency }) =>
      `Up to how many decibels may an oscilloscope of ${given(bandwidth, 'MHz')} show too little at ${given(frequency, 'MHz')}, if its front end falls off like a single pole?`,
    answer: ({ bandwidth, frequency }) => singlePoleLossDb(frequency / bandwidth),
    write: fixed('dB', 2),
    wrong: ({ bandwidth, frequency }) => [
      [0, 'bandwidth-is-enough'],
      [
        (3.01 * frequency) / bandwidth,
        'frequency-linear',
        'It is 3 dB at the bandwidth, but it does not get there in a straight line: the square of the ratio counts.',
      ],
      [
        2 * singlePoleLossDb(frequency / bandwidth),
        'twenty-for-ten',
        'The square is of volts already: ten times the logarithm of one plus it.',
      ],
    ],
    worked: ({ bandwidth, frequency }) => [
      `${given(frequency, 'MHz')}/${given(bandwidth, 'MHz')} = ${sig(frequency / bandwidth, 4)}.`,
      `A single pole takes 10 lg (1 + ${sig(frequency / bandwidth, 4)}²) =`,
    ],
    right: 'Not nothing: below three tenths of the bandwidth it belongs in the band.',
  }),
  numeric('methods', {
    id: 'no-termination',
    lesson: scope,
    syllabus: ['1.9', '8.2'],
    difficulty: 2,
    given: { watts: oneOf(0.01, 0.02, 0.025, 0.03, 0.04, 0.05, 0.08, 0.1) },
    stem: ({ watts }) =>
      `A signal generator with ${given(50, 'ohm')} inside is set to ${power(2)(watts)} into ${given(50, 'ohm')}. Somebody connects it to an open input of high resistance and puts the volts on the screen into V²pp/(8 × 50). What power comes out?`,
    answer: ({ watts }) => ofHeight(2 * Math.sqrt(8 * watts * 50)),
    write: power(),
    wrong: ({ watts }) => [
      [watts, 'termination-forgotten'],
      [2 * watts, 'not-squared', 'The volts double, and they are squared.'],
      [watts / 4, 'upside-down', 'It is the other way: without its load the generator shows more volts.'],
    ],
    worked: ({ watts }) => [
      'Without the load all of the inner voltage stands at the socket, twice as much as across the load.',
      `The power goes with the square: 2² × ${power(2)(watts)} =`,
    ],
    right: 'Twice the volts, four times the power, six decibels. It was never there.',
  }),
  numeric('methods', {
    id: 'two-terminations',
    lesson: scope,
    syllabus: ['1.9', '8.2'],
    difficulty: 3,
    given: { inner: oneOf(0.3, 0.4, 0.5, 0.6, 0.75, 0.9, 1.2) },
    stem: ({ inner }) =>
      `A signal generator has ${given(50, 'ohm')} inside and shows ${given(2 * inner, 'Vrms')} with nothing connected. A load of ${given(50, 'ohm')} is put on, and by mistake a second one beside it. What voltage is across them?`,
    answer: ({ inner }) => (2 * inner * beside(50, 50)) / (50 + beside(50, 50)),
    write: digits('Vrms', 3),
    typed: { quantity: 'voltsRms', unit: 'Vrms', tolerance: { of: 'share', size: 0.01 } },
    wrong: ({ inner }) => [
      [inner, 'link-left-out', 'That is with one load. The second one makes it 25 ohms.'],
      [
        inner / 2,
        'side-by-side',
        'The volts do not simply halve again: a third of the inner voltage stays across the two loads.',
      ],
      [
        (2 * inner * 100) / 150,
        'side-by-side',
        'That is for two loads in a row. Beside each other they are 25 ohms.',
      ],
    ],
    worked: ({ inner }) => [
      `Two loads of ${given(50, 'ohm')} beside each other are ${given(50, 'ohm')}/2 = ${given(25, 'ohm')}.`,
      `With the ${given(50, 'ohm')} inside they divide the voltage: ${given(2 * inner, 'Vrms')} × ${given(25, 'ohm')}/(${given(50, 'ohm')} + ${given(25, 'ohm')}) =`,
    ],
    right: 'A third instead of a half: three and a half decibels too few.',
  }),
  other('methods', 'choice', {
    id: 'full-scale',
    lesson: inLine,
    syllabus: ['8.1'],
    difficulty: 2,
    given: { scale: oneOf(10, 15, 20, 30, 50, 100), percent: oneOf(3, 5, 7.5, 10), shown: steps(2, 20, 1) },
    suits: ({ scale, percent, shown }) => {
      const part = shown / scale;
      return part < 0.6 && part > 0.08 && (scale * percent) / 100 < 0.45 * shown;
    },
    make: ({ scale, percent, shown }) => {
      const write = (half: number): string =>
        intervalText('shown', { lower: shown - half, upper: shown + half, decimals: 2, unit: 'W' });
      const half = (scale * percent) / 100;
      return {
        stem: `An in-line meter is good to ${givenBand(percent, 'percent')} of full scale. On its ${given(scale, 'W')} range it shows ${given(shown, 'W')}. Between which powers may the true one lie?`,
        payload: choices({ text: write(half), reply: 'The same watts everywhere on the scale.' }, [
          [write((shown * percent) / 100), 'percent-of-reading'],
          [write(half / 2), 'limit-halved', 'The limit is to either side: nothing is halved.'],
          [write(2 * half), 'full-width', 'The limit is to either side already: it is not doubled.'],
        ]),
        worked: [
          `${given(percent, 'percent')} of ${given(scale, 'W')} is ${exactly(half, 'W')}, wherever the needle stands.`,
          `${given(shown, 'W')} − ${exactly(half, 'W')} = ${fixed('W', 2)(shown - half)} and ${given(shown, 'W')} + ${exactly(half, 'W')} = ${fixed('W', 2)(shown + half)}, so ${write(half)}.`,
        ],
        right: 'The same watts everywhere on the scale.',
      };
    },
  }),
  numeric('methods', {
    id: 'full-scale-in-db',
    lesson: inLine,
    difficulty: 3,
    given: { scale: oneOf(10, 20, 30, 50), percent: oneOf(3, 5), shown: steps(2, 12, 1) },
    suits: ({ scale, percent, shown }) =>
      shown / scale < 0.5 && (scale * percent) / 100 / shown < 0.5 && (scale * percent) / 100 / shown > 0.12,
    stem: ({ scale, percent, shown }) =>
      `${givenBand(percent, 'percent')} of full scale, range ${given(scale, 'W')}, reading ${given(shown, 'W')}: how far below the reading may the power lie, in decibels?`,
    answer: ({ scale, percent, shown }) => -percentOfPowerToDb((-scale * percent) / shown),
    write: fixed('dB', 2),
    wrong: ({ scale, percent, shown }) => [
      [-percentOfPowerToDb(-percent), 'percent-of-reading'],
      [
        percentOfPowerToDb((scale * percent) / shown),
        'symmetric-watts',
        'That is how far it may lie above. Downwards the same watts are more decibels.',
      ],
      [-2 * percentOfPowerToDb((-scale * percent) / shown), 'twenty-for-ten'],
    ],
    worked: ({ scale, percent, shown }) => {
      const half = (scale * percent) / 100;
      const left = sig(1 - half / shown, 4);
      return [
        `${given(percent, 'percent')} of ${given(scale, 'W')} is ${exactly(half, 'W')}, and (${given(shown, 'W')} − ${exactly(half, 'W')})/${given(shown, 'W')} = ${left}.`,
        `In decibels that is down by −10 lg ${left} =`,
      ];
    },
    right: 'Downwards the same watts are more decibels than upwards.',
  }),
  numeric('methods', {
    id: 'dc-substitution',
    lesson: heat,
    syllabus: ['1.9', '8.1'],
    difficulty: 2,
    given: {
      volts: steps(5, 12, 0.5),
      amperes: steps(0.1, 0.3, 0.02),
      rf: steps(12, 16, 0.2),
      dc: steps(12, 16, 0.2),
    },
    suits: ({ rf, dc }) => Math.abs(rf / dc - 1) > 0.02,
    stem: ({ volts, amperes, rf, dc }) =>
      `A load in its box warms by ${given(rf, 'K')} with radio frequency. With ${given(volts, 'V')} and ${given(amperes, 'A')} of direct current it warms by ${given(dc, 'K')}. How large is the radio-frequency power?`,
    answer: ({ volts, amperes, rf, dc }) => (dcPower({ volts, amperes }) * rf) / dc,
    write: power(),
    typed: { quantity: 'power', unit: 'W', tolerance: { of: 'share', size: 0.006 } },
    wrong: ({ volts, amperes, rf, dc }) => [
      [volts * amperes, 'heat-no-ratio'],
      [(volts * amperes * dc) / rf, 'heat-ratio-inverted'],
      [
        (volts * amperes * rf) / dc / 2,
        'rms-as-vp',
        'Direct current has no peak: volts times amperes is the power as it is.',
      ],
    ],
    worked: ({ volts, amperes, rf, dc }) => [
      `The direct-current power is ${given(volts, 'V')} × ${given(amperes, 'A')} = ${digits('W', 4)(volts * amperes)}.`,
      `${digits('W', 4)(volts * amperes)} × ${given(rf, 'K')}/${given(dc, 'K')} =`,
    ],
    right: 'The known power, times the ratio of the rises.',
  }),
  numeric('methods', {
    id: 'meter-across-divider',
    lesson: joins,
    syllabus: ['3.1', '8.1'],
    difficulty: 3,
    given: {
      supply: oneOf(6, 9, 10, 12, 15, 20),
      part: oneOf(10, 22, 47, 100, 220),
      sensitivity: oneOf(10, 20),
      range: oneOf(10, 20),
    },
    suits: ({ part, sensitivity, range, supply }) =>
      part / (sensitivity * range) > 0.1 && part / (sensitivity * range) < 2.5 && supply / 2 < range,
    stem: ({ supply, part, sensitivity, range }) =>
      `Two resistors of ${given(part, 'kohm')} each divide ${given(supply, 'V')}. A needle instrument of ${given(sensitivity, 'kohm')} per volt, on its ${given(range, 'V')} range, is put across the lower one. What does it show?`,
    answer: ({ supply, part, sensitivity, range }) => {
      const lower = beside(part, sensitivity * range);
      return (supply * lower) / (part + lower);
    },
    write: digits('V', 3),
    wrong: ({ supply, part, sensitivity, range }) => [
      [supply / 2, 'loading-left-out'],
      [(supply * (part + sensitivity * range)) / (2 * part + sensitivity * range), 'loading-on-both'],
      [
        (supply * beside(part, sensitivity)) / (part + beside(part, sensitivity)),
        'link-left-out',
        'The instrument’s resistance is its kilohms per volt times the range.',
      ],
    ],
    worked: ({ supply, part, sensitivity, range }) => {
      const own = sensitivity * range;
      const lower = digits('kohm', 4)(beside(part, own));
      return [
        `The instrument has ${given(range)} × ${given(sensitivity, 'kohm')} = ${given(own, 'kohm')}; the lower resistor with it ${given(part, 'kohm')} × ${given(own, 'kohm')}/(${given(part, 'kohm')} + ${given(own, 'kohm')}) = ${lower}.`,
        `${given(supply, 'V')} × ${lower}/(${given(part, 'kohm')} + ${lower}) =`,
      ];
    },
    right: 'The instrument lies beside the resistor, and takes a part of the current.',
  }),
  numeric('methods', {
    id: 'digital-meter-loading',
    lesson: joins,
    syllabus: ['1.2', '8.1'],
    difficulty: 2,
    given: { inner: oneOf(0.22, 0.47, 0.68, 1, 1.5, 2.2, 3.3, 4.7), open: steps(2, 12, 1) },
    stem: ({ inner, open }) =>
      `A detector gives ${given(open, 'V')} with nothing connected, behind ${given(inner * 1000, 'kohm')}. A multimeter of ${given(10)}${'\u00a0'}MΩ is put on it. What does it show?`,
    answer: ({ inner, open }) => (open * 10) / (10 + inner),
    write: digits('V', 3),
    typed: { quantity: 'voltsDc', unit: 'V', tolerance: { of: 'share', size: 0.005 } },
    wrong: ({ inner, open }) => [
      [open, 'loading-left-out'],
      [
        open * (1 - inner / 10),
        'loading-left-out',
        'The two resistances are in a row: what counts is the share of their sum.',
      ],
      [(open * inner) / (10 + inner), 'lost-for-left', 'That voltage stands across the inner resistance.'],
    ],
    suits: ({ inner }) => inner > 1.4,
    worked: ({ inner, open }) => [
      `The meter’s own resistance gets its share: ${given(open, 'V')} × ${given(10_000, 'kohm')}/(${given(10_000, 'kohm')} + ${given(inner * 1000, 'kohm')}) =`,
    ],
    right: 'A divider of the inner resistance and the meter’s own.',
  }),
  numeric('methods', {
    id: 'probe-capacitance',
    lesson: joins,
    difficulty: 3,
    given: { picofarads: oneOf(60, 80, 100, 120, 150), frequency: oneOf(14, 21, 28, 30, 50) },
    suits: ({ picofarads, frequency }) => picofarads * frequency > 1800,
    stem: ({ picofarads, frequency }) =>
      `A probe of ${given(picofarads)}${'\u00a0'}pF lies across ${given(50, 'ohm')} of source and ${given(50, 'ohm')} of load. At ${given(frequency, 'MHz')}, how many decibels of power does the load lose?`,
    answer: ({ picofarads, frequency }) =>
      shuntCapacitanceLossDb({
        capacitanceF: picofarads * 1e-12,
        frequencyHz: frequency * 1e6,
        resistanceOhm: 50,
      }),
    write: fixed('dB', 2),
    wrong: ({ picofarads, frequency }) => {
      const x = 2 * Math.PI * frequency * 1e6 * picofarads * 1e-12;
      return [
        [0, 'probe-as-wire'],
        [
          10 * Math.log10(1 + (x * 50) ** 2),
          'link-left-out',
          'The capacitance sees source and load side by side: 25 ohms, not 50.',
        ],
        [
          20 * Math.log10(1 + x * 25),
          'factors-added',
          'A capacitance and a resistance stand at a right angle: their squares add.',
        ],
      ];
    },
    worked: ({ picofarads, frequency }) => {
      const x = sig(2 * Math.PI * frequency * 1e6 * picofarads * 1e-12 * 25, 4);
      return [
        `Source and load side by side are ${given(50, 'ohm')}/2 = ${given(25, 'ohm')}; 2π × ${given(frequency, 'MHz')} × ${given(picofarads)}${'\u00a0'}pF × ${given(25, 'ohm')} = ${x}.`,
        `10 lg (1 + ${x}²) =`,
      ];
    },
    right: 'It changes what it is connected to; no correction of the reading brings that back.',
  }),
  numeric('methods', {
    id: 'probe-setting',
    lesson: scope,
    syllabus: ['8.2'],
    difficulty: 2,
    given: { shown: oneOf(10, 12, 15, 18, 20, 24, 25, 30, 35, 40, 45, 50) },
    stem: ({ shown }) =>
      `The probe divides by ten, the oscilloscope is set for one that does not, and somebody works out ${given(shown, 'mW')}. How much power is it really?`,
    answer: ({ shown }) => (shown / 1000) * dbToPowerRatio(gainDb(20)),
    write: power(),
    wrong: ({ shown }) => [
      [shown / 100, 'not-squared', 'Ten times the volts; and they are squared.'],
      [
        shown / 1000,
        'probe-switch',
        'The screen shows a tenth of the volts: the power cannot stay the same.',
      ],
      [shown / 1e5, 'upside-down', 'It is the other way: the screen shows too little.'],
    ],
    worked: ({ shown }) => [
      `The volts are 10 times what is shown, the power 10² = 100 times, so 100 × ${given(shown, 'mW')} =`,
    ],
    right: 'A factor of a hundred, twenty decibels.',
  }),
];
