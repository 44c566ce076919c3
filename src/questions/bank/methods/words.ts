import { concept } from '../define.ts';
import type { BankQuestion } from '../types.ts';

const scope = 'measuring/oscilloscope-across-a-load';
const detector = 'measuring/peak-detector';
const inLine = 'measuring/in-line-meter';
const heat = 'measuring/radio-watts-from-dc-watts';
const joins = 'measuring/the-meter-joins-the-circuit';

/** Methods in words. */
export const METHOD_WORDS: readonly BankQuestion[] = [
  concept('methods', {
    id: 'out-of-range',
    lesson: scope,
    syllabus: ['8.1'],
    difficulty: 3,
    stem: 'A handheld for two metres is to be measured with an oscilloscope whose bandwidth is lower than its frequency. The trace is clean. What do you write down?',
    answer: ['no number, and why: the method is out of its range', 'A result that others can use.'],
    wrong: [
      [
        'what the trace says, since it is clean and steady',
        'bandwidth-is-enough',
        'Clean, steady, and far too small: beyond its bandwidth most of the signal is missing.',
      ],
      ['what the trace says, with the roll-off of one pole', 'bandwidth-as-correction'],
      [
        'what the trace says, and a band twice as wide',
        'bandwidth-as-correction',
        'Twice as wide as what, and to which side? A band needs a reason.',
      ],
    ],
    worked:
      'Above about three tenths of the bandwidth nobody knows how this front end falls off. Take pads into a power meter instead.',
  }),
  concept('methods', {
    id: 'detector-low-level',
    lesson: detector,
    syllabus: ['8.1'],
    difficulty: 2,
    stem: 'Why can a diode detector not be trusted far down, at a few milliwatts, by adding a fixed drop?',
    answer: [
      'the diode follows the square there, not the crest',
      'Only a curve taken with known levels helps.',
    ],
    wrong: [
      [
        'the multimeter takes more current than at high level',
        'drop-is-fixed',
        'It takes less. It is the diode that changes its law.',
      ],
      [
        'the drop becomes larger, so one and a half times',
        'drop-is-fixed',
        'There is no factor that would do: the law itself is another.',
      ],
      [
        'harmonics are stronger in weak signals than in strong',
        'drop-is-fixed',
        'Weak signals are, if anything, the cleaner ones.',
      ],
    ],
    worked:
      'At some tens of millivolts a diode is a square-law device. No fixed drop brings it back to the crest: take a curve, with known levels.',
  }),
  concept('methods', {
    id: 'detector-and-harmonics',
    lesson: detector,
    syllabus: ['1.7', '8.1'],
    difficulty: 3,
    stem: 'A transmitter has strong harmonics. A detector across the load shows too much or too little. What helps best?',
    answer: ['a low-pass filter between transmitter and load', 'Clean the wave before you blame the meter.'],
    wrong: [
      [
        'a larger capacitor behind the diode of the detector',
        'detector-on-harmonics',
        'It holds the bent crest better, and that is all.',
      ],
      [
        'the mean of the readings with both diode directions',
        'detector-on-harmonics',
        'That helps against a second harmonic, which bends one crest up and the other down; a third bends both alike.',
      ],
      [
        'a fixed correction by the strength of the harmonic',
        'mismatch-known',
        'Its phase decides whether the crest is bent up or down, and nobody knows it.',
      ],
    ],
    worked:
      'A harmonic a tenth as strong in volts moves the crest by up to a tenth, and the power by a hundredth. A filter takes the doubt away at its source.',
  }),
  concept('methods', {
    id: 'smallest-range',
    lesson: inLine,
    syllabus: ['8.1', '8.2'],
    difficulty: 1,
    stem: 'The limit of an in-line meter is a share of full scale. On which range do you read?',
    answer: ['the smallest that holds the power', 'The limit in watts goes with the range.'],
    wrong: [
      [
        'the largest, to spare the needle',
        'range-is-better',
        'Begin there, to be safe. For the reading itself go down to the smallest that holds the power.',
      ],
      ['any: a share is a share', 'percent-of-reading', 'A share of the scale, not of the reading.'],
      [
        'the one on which the needle stands in the middle',
        'range-is-better',
        'Nearer to the end of the scale the same limit is a smaller share of the reading.',
      ],
    ],
    worked:
      'The limit stays the same in watts all along the scale: it is the smallest share of the reading near the end of the smallest range.',
  }),
  concept('methods', {
    id: 'why-dc',
    lesson: heat,
    syllabus: ['8.1'],
    difficulty: 2,
    stem: 'What is the idea behind heating the load once with radio frequency and once with direct current?',
    answer: [
      'equal heat means equal power, and direct current is easy to measure',
      'It ties the watt at radio frequency to the volt and the ampere.',
    ],
    wrong: [
      [
        'direct current warms the load faster, which saves time at the bench',
        'heat-too-early',
        'It takes just as long. Nothing is gained but certainty.',
      ],
      [
        'the direct current drives the radio frequency out of the thermometer',
        'heat-too-early',
        'Never both at once. They are two measurements, one after the other.',
      ],
      [
        'the load has less resistance for direct current than for radio frequency',
        'another-question',
        'It should be the same. If it were not, that would be an error of the method.',
      ],
    ],
    worked:
      'Heat does not know where it came from. National laboratories tie radio-frequency power to direct-current power in the same way, with more care.',
  }),
  concept('methods', {
    id: 'multimeter-at-rf',
    lesson: joins,
    syllabus: ['8.1', '8.2'],
    difficulty: 1,
    stem: 'A multimeter, set to alternating volts, shows a steady value across a load at seven megahertz. What is it worth?',
    answer: ['nothing, unless its data sheet reaches that far', 'Most end at some kilohertz.'],
    wrong: [
      [
        'as much as at the frequency of the mains',
        'meter-frequency',
        'Look into its data sheet: the statement on alternating volts has an upper frequency.',
      ],
      [
        'the RMS voltage, if the meter is a true-RMS one',
        'meter-frequency',
        'True RMS is about the form of the wave. The frequency is another matter.',
      ],
      [
        'a lower limit, as the true value can only be more',
        'meter-frequency',
        'Leads resonate, and diodes rectify: it may just as well show too much.',
      ],
    ],
    worked:
      'The influence of frequency on a reading is in every data sheet, and many do not read that far down.',
  }),
  concept('methods', {
    id: 'receiver-as-meter',
    lesson: 'measuring/pads-into-a-meter',
    difficulty: 2,
    stem: 'A software-defined receiver shows levels to a hundredth of a decibel. For what can it be used without a calibration?',
    answer: [
      'for differences between two levels, at one setting',
      'As a ratio meter it may repeat very well.',
    ],
    wrong: [
      ['for levels in dBm, to a hundredth of a decibel', 'digits-are-accuracy'],
      ['for levels in dBm, to about one decibel', 'uncalibrated-level'],
      [
        'for nothing, until a laboratory has seen it',
        'calibrated-is-right',
        'What it compares with itself, it can compare now.',
      ],
    ],
    worked:
      'Its reference is full scale, not a milliwatt. Compared at one frequency and gain, two readings tell their ratio; the zero has to come from a known level.',
  }),
  concept('methods', {
    id: 'what-probe-changes',
    lesson: joins,
    syllabus: ['8.1'],
    difficulty: 2,
    stem: 'A heavy probe is put across the load, and the power in it falls while the probe is on. What has happened?',
    answer: ['the probe has changed what is measured', 'What it shows is there, but only with the probe.'],
    wrong: [
      ['the probe has an error, to be corrected', 'loading-is-error'],
      ['the probe has too coarse a resolution', 'loading-is-error', 'Finer digits would show the same fall.'],
      [
        'the probe has drifted since calibration',
        'loading-is-error',
        'It falls at once, and comes back as soon as the probe is off.',
      ],
    ],
    worked:
      'The probe reads rightly what is across it. It has become a part of the circuit: use a lighter one, or leave it on for good and count it in.',
  }),
  concept('methods', {
    id: 'divide-by-four',
    lesson: scope,
    syllabus: ['8.1'],
    difficulty: 2,
    stem: 'By mistake a transmitter was keyed into an oscilloscope input without its load, and somebody wants to save the reading by dividing the power by four. What do you say?',
    answer: [
      'no: a transmitter is no ideal fifty-ohm source',
      'Take the reading again with the load, after looking whether the last stage has survived.',
    ],
    wrong: [
      ['yes: without a load the volts are twice as high', 'divide-by-four'],
      [
        'yes, but by two, since only the volts are doubled',
        'not-squared',
        'Volts are squared in the power. And neither factor holds for a transmitter.',
      ],
      ['no: the reading is right as it stands on the screen', 'termination-forgotten'],
    ],
    worked:
      'Twice the volts holds for an ideal source matched to fifty ohms. What a transmitter does without a load nobody knows, and it may be its last deed: never key without one.',
  }),
];
