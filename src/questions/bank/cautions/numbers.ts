import {
  addGain,
  gainDb,
  heatInPad,
  levelDbm,
  levelToPower,
  ohms,
  peakOfPower,
  powerToLevel,
  powerW,
  voltsOfPower,
} from '#compute';
import { choices, numeric, other, type WrongText } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { digits, fixed, given, givenBand, givenPower, power, sig } from '../write.ts';

const pads = 'measuring/pads-into-a-meter';
const scope = 'measuring/oscilloscope-across-a-load';
const detector = 'measuring/peak-detector';
const line = 'decibels/down-the-line';
const joins = 'measuring/the-meter-joins-the-circuit';
const syllabus = ['1.9'];
const level = (watts: number): number => powerToLevel(powerW(watts));
const upper = (watts: number, tolerance: number): number => levelToPower(levelDbm(level(watts) + tolerance));
const rms = (watts: number, r = 50): number => voltsOfPower({ power: powerW(watts), resistance: ohms(r) });
const peak = (watts: number, r = 50): number => peakOfPower({ power: powerW(watts), resistance: ohms(r) });
const heat = (watts: number, loss: number): number =>
  heatInPad({ power: powerW(watts), gain: gainDb(-loss) });

const inRms = digits('Vrms', 3);

/** Slips that refuse a sine which a rating of 5 V RMS allows. */
const tooCareful = (height: number): readonly WrongText[] => [
  [
    `no: ${given(height)} is more than twice ${given(5)}`,
    'rms-for-rating',
    'That compares peak to peak with RMS. Bring the sine to RMS first.',
  ],
  [
    `no: its peak, ${given(height / 2, 'V')}, is more than ${given(5, 'V')}`,
    'rms-for-rating',
    'That compares the peak with an RMS rating: the peak may be √2 times as high.',
  ],
];

/** Slips that allow a sine which the same rating refuses. */
const tooBold = (height: number): readonly WrongText[] => [
  [
    `yes: that is ${inRms(height / Math.sqrt(32))}`,
    'vp-as-vpp',
    'That halves twice. From trough to crest halve once, and divide by √2: such an input would be lost.',
  ],
  [
    `yes: that is ${inRms(height / 4)}`,
    'half-only',
    'RMS is the peak divided by √2, not by two: such an input would be lost.',
  ],
];

/** Cautions with drawn numbers. */
export const CAUTION_NUMBERS: readonly BankQuestion[] = [
  numeric('cautions', {
    id: 'upper-volts-at-input',
    lesson: scope,
    syllabus,
    difficulty: 2,
    given: { watts: oneOf(0.2, 0.25, 0.3, 0.4, 0.5), tolerance: oneOf(1, 1.5, 2) },
    stem: ({ watts, tolerance }) =>
      `A transmitter of ${givenPower(watts)} ${givenBand(tolerance, 'dB')} would go straight into a ${given(50, 'ohm')} oscilloscope input. What RMS voltage must the input bear, at the most?`,
    answer: ({ watts, tolerance }) => rms(upper(watts, tolerance)),
    write: digits('Vrms', 3),
    wrong: ({ watts, tolerance }) => [
      [rms(watts), 'nominal-for-upper'],
      [
        rms(watts) * 10 ** (tolerance / 10),
        'ten-for-twenty',
        'The volts go with the root of the power: twenty in the exponent.',
      ],
      [
        rms(upper(watts, -tolerance)),
        'nominal-for-upper',
        'That is the least it may give. Protection counts with the most.',
      ],
    ],
    worked: ({ watts, tolerance }) => [
      `Its upper limit: ${givenPower(watts)} times ten to the power of ${given(tolerance)}/10 is ${power(4)(upper(watts, tolerance))}.`,
      `The root of power times resistance: √(${power(4)(upper(watts, tolerance))} × ${given(50, 'ohm')}) =`,
    ],
    right: 'The largest power, not the nominal one. Such inputs commonly stand five volts RMS.',
  }),
  numeric('cautions', {
    id: 'pad-forgotten',
    lesson: pads,
    syllabus,
    difficulty: 2,
    given: { watts: oneOf(0.5, 1, 2, 4, 5, 8, 10), pad: oneOf(20, 30, 40), most: oneOf(0, 10, 13, 20) },
    suits: ({ watts, pad, most }) => level(watts) - pad < most - 1 && level(watts) > most + 3,
    stem: ({ watts, pad, most }) =>
      `A power of ${givenPower(watts)} goes through a pad of ${given(pad, 'dB')} into a receiver that stands ${given(most, 'dBm')}. By how many decibels is the receiver overloaded if somebody forgets the pad?`,
    answer: ({ watts, most }) => level(watts) - most,
    write: fixed('dB', 1),
    wrong: ({ watts, pad, most }) => [
      [pad, 'link-left-out', 'That is how much more arrives. By how much it is too much, the limit decides.'],
      [most - (level(watts) - pad), 'pad-cannot-fail', 'That is the room that there is with the pad.'],
      [level(watts) - 30 + most, 'milliwatts-for-watts'],
    ],
    worked: ({ watts, most }) => [
      `${given(watts, 'W')} is ${fixed('dBm', 2)(level(watts))}, and without the pad all of it arrives.`,
      `Too much by ${fixed('dBm', 2)(level(watts))} − ${given(most, 'dBm')} =`,
    ],
    right: 'Always work it out without the pad as well.',
  }),
  numeric('cautions', {
    id: 'least-attenuation',
    lesson: pads,
    syllabus,
    difficulty: 2,
    given: {
      nominal: oneOf(27, 30, 33, 37),
      up: oneOf(0.5, 1, 1.5, 2),
      pad: oneOf(20, 30, 40),
      off: oneOf(0.3, 0.5, 1),
    },
    stem: ({ nominal, up, pad, off }) =>
      `A transmitter of ${given(nominal, 'dBm')} ${givenBand(up, 'dB')} and a pad of ${given(pad, 'dB')} ${givenBand(off, 'dB')}. What level must the meter behind it bear, at the most?`,
    answer: ({ nominal, up, pad, off }) =>
      addGain({ level: levelDbm(nominal + up), gain: gainDb(-(pad - off)) }),
    write: fixed('dBm', 1),
    typed: { quantity: 'level', unit: 'dBm', tolerance: { of: 'value', size: 0.05 } },
    suits: ({ up, off }) => up !== off,
    wrong: ({ nominal, up, pad, off }) => [
      [nominal - pad, 'nominal-for-upper'],
      [
        nominal + up - pad - off,
        'nominal-for-upper',
        'The largest power is right. But the pad may also take less than is printed on it.',
      ],
      [
        nominal + up - pad,
        'nominal-for-upper',
        'The largest power is right. The pad’s own limits count as well.',
      ],
    ],
    worked: ({ nominal, up, pad, off }) => [
      `The largest level, less the least attenuation: ${given(nominal, 'dBm')} + ${given(up, 'dB')} − (${given(pad, 'dB')} − ${given(off, 'dB')}) =`,
    ],
    right: 'The most that may come, and the least that may be taken off.',
  }),
  numeric('cautions', {
    id: 'heat-at-upper-limit',
    lesson: pads,
    syllabus,
    difficulty: 3,
    given: { watts: oneOf(0.5, 1, 2, 4, 5, 10), tolerance: oneOf(1, 1.5, 2), loss: oneOf(3, 6, 10, 20) },
    stem: ({ watts, tolerance, loss }) =>
      `The transmitter is specified ${givenPower(watts)} ${givenBand(tolerance, 'dB')}; the first pad has ${given(loss, 'dB')}. How much heat must that pad bear, at the most?`,
    answer: ({ watts, tolerance, loss }) => heat(upper(watts, tolerance), loss),
    write: power(),
    suits: ({ loss }) => loss !== 3,
    wrong: ({ watts, tolerance, loss }) => [
      [heat(watts, loss), 'nominal-for-upper'],
      [upper(watts, tolerance) - heat(upper(watts, tolerance), loss), 'left-for-heat'],
      [heat(watts * (1 + tolerance / 10), loss), 'db-as-percent'],
    ],
    worked: ({ watts, tolerance, loss }) => {
      const into = power(4)(upper(watts, tolerance));
      const out = power(4)(upper(watts, tolerance - loss));
      return [
        `At the upper limit there go in: ${given(watts, 'W')} times ten to the power of ${given(tolerance)}/10 is ${into}.`,
        `There come out: ${given(watts, 'W')} times ten to the power of (${given(tolerance)} − ${given(loss)})/10 is ${out}.`,
        `The rest is heat: ${into} − ${out} =`,
      ];
    },
    right: 'With the largest power that the specification allows.',
  }),
  numeric('cautions', {
    id: 'resistors-in-parallel',
    lesson: line,
    syllabus: ['1.1', '3.1'],
    difficulty: 2,
    given: { count: oneOf(2, 4, 6, 8, 10, 12, 16, 20), each: oneOf(0.25, 0.5, 1, 2) },
    stem: ({ count, each }) =>
      `A dummy load of ${given(50, 'ohm')} is made of ${given(count)} equal resistors of ${given(50 * count, 'ohm')} in parallel, each good for ${given(each, 'W')}. Up to what RMS voltage may it be used, going by these ratings alone?`,
    answer: ({ count, each }) => rms(count * each),
    write: digits('Vrms', 3),
    wrong: ({ count, each }) => [
      [rms(each), 'link-left-out', 'That is for one resistor of 50 ohms. They share the power.'],
      [peak(count * each), 'root-two-wrong-way', 'That is the peak. Power goes with RMS volts.'],
      [count * each * 50, 'root-left-out'],
      [rms(count * each) / count, 'side-by-side', 'In parallel all of them have the same voltage.'],
    ],
    suits: ({ count, each }) => count * each * 50 > 1 && Math.abs(rms(count * each) - count) > 0.5,
    worked: ({ count, each }) => [
      `Together they bear ${given(count)} × ${given(each, 'W')} = ${given(count * each, 'W')}.`,
      `The root of power times resistance: √(${given(count * each, 'W')} × ${given(50, 'ohm')}) =`,
    ],
    right: 'They share the power; and hot ones bear less than cool ones.',
  }),
  numeric('cautions', {
    id: 'reverse-volts-of-diode',
    lesson: detector,
    syllabus: ['1.6', '1.9'],
    difficulty: 3,
    given: { watts: oneOf(0.5, 1, 2, 2.5, 4, 5, 8, 10) },
    stem: ({ watts }) =>
      `A detector’s capacitor is charged to nearly the crest, and half a cycle later the wave stands at its trough. What voltage must the diode bear in reverse at ${givenPower(watts)} in ${given(50, 'ohm')}?`,
    answer: ({ watts }) => 2 * peak(watts),
    write: digits('V', 3),
    wrong: ({ watts }) => [
      [peak(watts), 'vp-as-vpp', 'That is the capacitor alone. The trough of the wave adds to it.'],
      [rms(watts), 'vpp-as-rms', 'RMS is no limit for a diode: what counts is the highest instant.'],
      [2 * rms(watts), 'rms-as-vp', 'Twice the RMS voltage falls short: the crest is √2 times as high.'],
    ],
    worked: ({ watts }) => [
      `The crest is √(2 × ${given(watts, 'W')} × ${given(50, 'ohm')}) = ${digits('V', 4)(peak(watts))}.`,
      `Capacitor and trough together are twice that: 2 × ${digits('V', 4)(peak(watts))} =`,
    ],
    right: 'Twice the crest.',
  }),
  numeric('cautions', {
    id: 'hot-rating',
    lesson: pads,
    difficulty: 2,
    given: { rated: oneOf(1, 2, 5, 10, 20), end: oneOf(100, 125, 150), now: oneOf(40, 50, 60, 70) },
    stem: ({ rated, end, now }) =>
      `A pad is rated ${given(rated, 'W')} up to ${given(25, 'degC')}; from there its rating falls in a straight line to nothing at ${given(end, 'degC')}. How much does it bear at ${given(now, 'degC')}?`,
    answer: ({ rated, end, now }) => (rated * (end - now)) / (end - 25),
    write: digits('W', 3),
    wrong: ({ rated, end, now }) => [
      [rated, 'nominal-for-upper', 'That is at 25 °C. Where it is warmer it bears less.'],
      [(rated * (now - 25)) / (end - 25), 'lost-for-left', 'That is what has been lost of the rating.'],
      [(rated * (end - now)) / end, 'from-nought', 'The line begins at 25 °C, not at nought.'],
    ],
    suits: ({ end, now }) => Math.abs(end - now - (now - 25)) > 4,
    worked: ({ rated, end, now }) => [
      `The line is ${given(end)} − 25 = ${given(end - 25)} degrees long, and ${given(end)} − ${given(now)} = ${given(end - now)} of them are left.`,
      `${given(end - now)}/${given(end - 25)} × ${given(rated, 'W')} =`,
    ],
    right: 'A straight line from the rating to nothing.',
  }),
  numeric('cautions', {
    id: 'volts-at-high-impedance',
    lesson: joins,
    syllabus: ['1.9', '10'],
    difficulty: 2,
    given: { watts: oneOf(1, 2, 3, 4, 5, 8, 10), kilohms: oneOf(2, 2.5, 3, 4, 5) },
    stem: ({ watts, kilohms }) =>
      `“It is only ${given(watts, 'W')}.” At the end of a wire, where the antenna has ${given(kilohms, 'kohm')}, what RMS voltage is that?`,
    answer: ({ watts, kilohms }) => rms(watts, 1000 * kilohms),
    write: digits('Vrms', 3),
    wrong: ({ watts, kilohms }) => [
      [
        rms(watts),
        'load-assumed',
        'That is in fifty ohms. Here the resistance is much higher, and with it the volts.',
      ],
      [rms(watts, kilohms), 'prefix-slip', 'The kilo is missing: put ohms under the root.'],
      [
        2 * peak(watts, 1000 * kilohms),
        'vpp-as-rms',
        'That is from trough to crest. Asked is the RMS voltage.',
      ],
    ],
    worked: ({ watts, kilohms }) => [
      `The root of power times resistance: √(${given(watts, 'W')} × ${given(kilohms, 'kohm')}) =`,
    ],
    right: 'Low power is not low voltage. Do not touch it.',
  }),
  numeric('cautions', {
    id: 'left-after-failed-pad',
    lesson: pads,
    syllabus,
    difficulty: 3,
    given: { watts: oneOf(0.5, 1, 2, 4, 5), first: oneOf(10, 20), second: oneOf(10, 20) },
    suits: ({ first, second }) => first !== second,
    stem: ({ watts, first, second }) =>
      `Pads of ${given(first, 'dB')} and ${given(second, 'dB')} stand behind ${givenPower(watts)}. The first one burns out and lets everything through. How much reaches the second one’s output?`,
    answer: ({ watts, second }) => levelToPower(levelDbm(level(watts) - second)),
    write: power(),
    wrong: ({ watts, first, second }) => [
      [
        levelToPower(levelDbm(level(watts) - first - second)),
        'pad-cannot-fail',
        'That is while both are sound.',
      ],
      [levelToPower(levelDbm(level(watts) - first)), 'link-left-out', 'That is with the other pad failed.'],
      [heat(watts, second), 'heat-for-left', 'That is the heat in the second one, as long as it lasts.'],
    ],
    worked: ({ watts, second }) => [
      `Only ${given(second, 'dB')} are left: ten to the power of −${given(second)}/10 is ${sig(10 ** (-second / 10), 4)}.`,
      `${sig(10 ** (-second / 10), 4)} × ${givenPower(watts)} =`,
    ],
    right: 'What if it fails? The meter has to survive that, or there has to be something else in the way.',
  }),
  other('cautions', 'choice', {
    id: 'rating-in-rms',
    lesson: scope,
    syllabus: ['1.6'],
    difficulty: 2,
    given: { height: steps(10.5, 19.5, 0.5) },
    suits: ({ height }) => height < 14 || height > 14.5,
    make: ({ height }) => {
      const bears = height / Math.sqrt(8) < 5;
      const answer = `${bears ? 'yes' : 'no'}: that is ${inRms(height / Math.sqrt(8))}`;
      return {
        stem: `A ${given(50, 'ohm')} input is rated for ${given(5, 'Vrms')}. A sine of ${given(height, 'Vpp')} arrives at it. Does it bear that?`,
        payload: choices(
          { text: answer, reply: 'Like compared with like. And count with the largest that may come.' },
          [
            ...(bears ? tooCareful(height) : tooBold(height)),
            [
              `no: that is ${inRms(height / Math.SQRT2)}`,
              'vpp-as-vp',
              'That divides by √2 without halving first.',
            ],
          ],
        ),
        worked: [
          `The height over 2√2 is the RMS voltage: ${given(height, 'Vpp')}/(2√2) = ${inRms(height / Math.sqrt(8))}.`,
          `That is ${bears ? 'below' : 'above'} ${given(5, 'Vrms')}. So ${answer}.`,
        ],
        right: 'Like compared with like.',
      };
    },
  }),
];
