import {
  addGain,
  amplitudeRatioToDb,
  cableLossDb,
  dbToPowerRatio,
  gainDb,
  heatInPad,
  levelDbm,
  levelToPower,
  levelToVolts,
  ohms,
  powerRatioToDb,
  powerToLevel,
  powerW,
} from '#compute';
import { numeric } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { digits, exactly, fixed, given, givenPower, power, sig, takenOff } from '../write.ts';

const lesson = 'decibels/down-the-line';
const pads = 'measuring/pads-into-a-meter';
const through = (watts: number, loss: number): number => watts * dbToPowerRatio(gainDb(-loss));
const heat = (watts: number, loss: number): number =>
  heatInPad({ power: powerW(watts), gain: gainDb(-loss) });
const level = (watts: number): number => powerToLevel(powerW(watts));
const dbm2 = fixed('dBm', 2);

/** Pads and lines with drawn numbers. */
export const LINE_NUMBERS: readonly BankQuestion[] = [
  numeric('lines', {
    id: 'out-of-pad',
    lesson,
    syllabus: ['1.9'],
    difficulty: 1,
    given: { watts: oneOf(0.5, 1, 2, 2.5, 4, 5, 8, 10, 20), loss: oneOf(3, 6, 10, 13, 16, 20, 23, 30) },
    stem: ({ watts, loss }) =>
      `A power of ${givenPower(watts)} goes into a pad of ${given(loss, 'dB')}. How much comes out?`,
    answer: ({ watts, loss }) => through(watts, loss),
    write: power(),
    wrong: ({ watts, loss }) => [
      [watts / loss, 'db-as-factor'],
      [
        through(watts, loss / 2),
        'twenty-for-ten',
        'Twenty in the exponent is for volts. For power it is ten.',
      ],
      [heat(watts, loss), 'heat-for-left'],
    ],
    suits: ({ loss }) => loss !== 3 && loss !== 10,
    worked: ({ watts, loss }) => [
      `Ten to the power of −${given(loss)}/10 is ${sig(dbToPowerRatio(gainDb(-loss)), 4)}: that share comes out.`,
      `${sig(dbToPowerRatio(gainDb(-loss)), 4)} × ${givenPower(watts)} =`,
    ],
    right: 'Ten to the power of minus a tenth of the decibels.',
  }),
  numeric('lines', {
    id: 'heat-in-pad',
    lesson,
    syllabus: ['1.9'],
    difficulty: 2,
    given: { watts: oneOf(1, 2, 3, 4, 5, 8, 10, 15, 20, 25), loss: oneOf(1, 1.5, 2, 3, 4, 5, 6, 7, 8, 10) },
    stem: ({ watts, loss }) =>
      `A power of ${given(watts, 'W')} goes into a pad of ${given(loss, 'dB')}. How much of it must the pad get rid of as heat?`,
    answer: ({ watts, loss }) => heat(watts, loss),
    write: digits('W', 3),
    suits: ({ loss }) => loss !== 3,
    wrong: ({ watts, loss }) => [
      [through(watts, loss), 'left-for-heat'],
      [
        watts - through(watts, loss / 2),
        'twenty-for-ten',
        'Twenty in the exponent is for volts. For power it is ten.',
      ],
      [watts, 'all-is-heat'],
    ],
    worked: ({ watts, loss }) => [
      `What comes out: ${given(watts, 'W')} times ten to the power of −${given(loss)}/10 is ${digits('W', 4)(through(watts, loss))}.`,
      `The rest stays inside: ${given(watts, 'W')} − ${digits('W', 4)(through(watts, loss))} =`,
    ],
    right: 'What goes in and does not come out.',
  }),
  numeric('lines', {
    id: 'heat-in-second-pad',
    lesson: pads,
    syllabus: ['1.9'],
    difficulty: 3,
    given: { watts: oneOf(1, 2, 4, 5, 8, 10, 20), first: oneOf(3, 6, 10), second: oneOf(6, 10, 20) },
    stem: ({ watts, first, second }) =>
      `A power of ${given(watts, 'W')} goes through a pad of ${given(first, 'dB')} and then one of ${given(second, 'dB')}. How much heat is made in the second?`,
    answer: ({ watts, first, second }) => heat(through(watts, first), second),
    write: power(),
    wrong: ({ watts, first, second }) => [
      [heat(watts, second), 'link-left-out', 'That is what it would have to bear if it stood first.'],
      [heat(watts, first), 'pad-order', 'That is the heat of the first pad.'],
      [through(watts, first + second), 'left-for-heat'],
    ],
    suits: ({ first, second }) => first !== second,
    worked: ({ watts, first, second }) => {
      const [before, after] = [through(watts, first), through(watts, first + second)];
      return [
        `What reaches the second pad: ${givenPower(watts)} times ten to the power of −${given(first)}/10 is ${power(4)(before)}.`,
        `What comes out of it: ${givenPower(watts)} times ten to the power of −(${given(first)} + ${given(second)})/10 is ${power(4)(after)}.`,
        `Between the two lies the heat: ${power(4)(before)} − ${power(4)(after)} =`,
      ];
    },
    right: 'What reaches it, less what leaves it.',
  }),
  numeric('lines', {
    id: 'back-to-socket',
    lesson: pads,
    syllabus: ['1.9'],
    difficulty: 2,
    given: { shown: steps(-18, -6, 0.1), pad: oneOf(30, 40), cable: steps(0.1, 0.9, 0.1) },
    stem: ({ shown, pad, cable }) =>
      `Behind pads of ${given(pad, 'dB')} and a cable that loses ${given(cable, 'dB')} a power meter shows ${fixed('dBm', 1)(shown)}. What level is at the transmitter’s socket?`,
    answer: ({ shown, pad, cable }) => addGain({ level: levelDbm(shown), gain: gainDb(pad + cable) }),
    write: fixed('dBm', 1),
    typed: { quantity: 'level', unit: 'dBm', tolerance: { of: 'value', size: 0.05 } },
    wrong: ({ shown, pad, cable }) => [
      [
        shown - pad - cable,
        'sign-of-loss',
        'Going back towards the transmitter, what the pads and the cable took is added.',
      ],
      [shown + pad - cable, 'sign-of-loss', 'The cable took something too: it is added like the pads.'],
      [shown + pad, 'link-left-out', 'The cable has been left out.'],
      [pad + cable - shown, 'sign-of-gain', 'The reading is below nought: its minus belongs to the sum.'],
    ],
    worked: ({ shown, pad, cable }) => [
      `Back up the line, what was lost is added: ${fixed('dBm', 1)(shown)} + ${given(pad, 'dB')} + ${given(cable, 'dB')} =`,
    ],
    right: 'What was lost on the way is added to the reading.',
  }),
  numeric('lines', {
    id: 'forgotten-pad',
    lesson: pads,
    syllabus: ['1.9'],
    difficulty: 2,
    given: { shown: steps(-25, -5, 0.1), pad: oneOf(20, 30, 40) },
    stem: ({ shown, pad }) =>
      `A power meter shows ${fixed('dBm', 1)(shown)}, and the log book says that power, as if there were no pad. There was one of ${given(pad, 'dB')}. What should it say?`,
    answer: ({ shown, pad }) => levelToPower(levelDbm(shown + pad)),
    write: power(),
    wrong: ({ shown, pad }) => [
      [levelToPower(levelDbm(shown)), 'link-left-out', 'That is what the book says now, without the pad.'],
      [pad * levelToPower(levelDbm(shown)), 'db-as-factor'],
      [
        levelToPower(levelDbm(shown - pad)),
        'sign-of-loss',
        'The pad took power away: before it there was more.',
      ],
      [levelToPower(levelDbm(shown + pad / 2)), 'twenty-for-ten'],
    ],
    worked: ({ shown, pad }) => [
      `${fixed('dBm', 1)(shown)} + ${given(pad, 'dB')} = ${fixed('dBm', 1)(shown + pad)}.`,
      `As a power ${fixed('dBm', 1)(shown + pad)} is`,
    ],
    right: 'Twenty decibels are a hundred times, thirty a thousand.',
  }),
  numeric('lines', {
    id: 'pad-for-meter',
    lesson: pads,
    syllabus: ['1.9'],
    difficulty: 2,
    given: { watts: oneOf(0.5, 1, 2, 4, 5, 8, 10, 20, 25), most: steps(-10, 10, 5) },
    stem: ({ watts, most }) =>
      `A transmitter may give up to ${givenPower(watts)}. The receiver behind it must not get more than ${fixed('dBm', 0)(most)}. By how many decibels does the transmitter exceed that limit? Pads have to take away at least as much.`,
    answer: ({ watts, most }) => level(watts) - most,
    write: fixed('dB', 1),
    typed: { quantity: 'loss', unit: 'dB', tolerance: { of: 'value', size: 0.1 } },
    wrong: ({ watts, most }) => [
      [
        level(watts) + most,
        'sign-of-loss',
        'Think of a weaker limit: the lower it is, the more pads it takes.',
      ],
      [level(watts) - 30 - most, 'milliwatts-for-watts'],
      [2 * (level(watts) - most), 'twenty-for-ten'],
    ],
    suits: ({ most }) => most !== 0,
    worked: ({ watts, most }) => [
      `${givenPower(watts)} is ${dbm2(level(watts))}.`,
      `${dbm2(level(watts))} − ${takenOff(fixed('dBm', 0)(most))} =`,
    ],
    right: 'The difference of the two levels; and then the next larger pad that there is.',
  }),
  numeric('lines', {
    id: 'cable-by-length',
    lesson,
    syllabus: ['6.3'],
    difficulty: 1,
    given: { table: steps(3, 22, 0.5), metres: oneOf(5, 8, 12, 15, 20, 25, 30, 35, 40) },
    stem: ({ table, metres }) =>
      `A table gives ${given(table, 'dB')} for ${given(100, 'm')} of a cable at your frequency. How much do ${given(metres, 'm')} of it lose?`,
    answer: ({ table, metres }) => (table * metres) / 100,
    write: fixed('dB', 2),
    typed: { quantity: 'loss', unit: 'dB', tolerance: { of: 'value', size: 0.03 } },
    suits: ({ table, metres }) => (table * metres) / 100 > 0.6,
    wrong: ({ table, metres }) => [
      [table, 'length-not-scaled'],
      [
        table + powerRatioToDb(metres / 100),
        'length-as-factor',
        'Decibels themselves go with the length: no logarithm of the length comes in.',
      ],
      [
        (table * 100) / metres,
        'length-not-scaled',
        'Shorter means less: multiply by the length and divide by that of the table.',
      ],
    ],
    worked: ({ table, metres }) => [
      `Decibels go with the length: ${given(table, 'dB')} × ${given(metres, 'm')}/${given(100, 'm')} =`,
    ],
    right: 'Decibels of a cable go with its length.',
  }),
  numeric('lines', {
    id: 'longest-cable',
    lesson,
    syllabus: ['6.3'],
    difficulty: 2,
    given: { table: steps(4, 20, 1), most: steps(0.5, 3, 0.5) },
    suits: ({ table, most }) => most < table / 2 && most >= table / 10,
    stem: ({ table, most }) =>
      `A cable loses ${given(table, 'dB')} in ${given(100, 'm')} at your frequency. No more than ${given(most, 'dB')} are to be lost in it. How long may it be?`,
    answer: ({ table, most }) => (100 * most) / table,
    write: fixed('m', 1),
    wrong: ({ table, most }) => [
      [
        table / most,
        'upside-down',
        'So often the loss allowed goes into that of the table. It is the length of the table that this divides.',
      ],
      [
        (100 * (1 - dbToPowerRatio(gainDb(-most)))) / (1 - dbToPowerRatio(gainDb(-table))),
        'length-as-factor',
      ],
      [
        100 - (100 * most) / table,
        'another-question',
        'That much would have to be cut off the length of the table. Asked is what is left.',
      ],
    ],
    worked: ({ table, most }) => [
      'Decibels of a cable go with its length, so the length goes with the decibels.',
      `${given(100, 'm')} × ${given(most, 'dB')}/${given(table, 'dB')} =`,
    ],
    right: 'The length of the table, times the loss allowed over the loss of the table.',
  }),
  numeric('lines', {
    id: 'cable-power-left',
    lesson,
    syllabus: ['6.3'],
    difficulty: 2,
    given: {
      table: steps(5, 20, 1),
      metres: oneOf(10, 15, 20, 25, 30),
      watts: oneOf(1, 2, 4, 5, 10, 20, 25),
    },
    stem: ({ table, metres, watts }) =>
      `A cable loses ${given(table, 'dB')} in ${given(100, 'm')}. A power of ${given(watts, 'W')} goes into ${given(metres, 'm')} of it. How much arrives at a matched load?`,
    answer: ({ table, metres, watts }) => through(watts, (table * metres) / 100),
    write: power(),
    wrong: ({ table, metres, watts }) => [
      [through(watts, table), 'length-not-scaled'],
      [watts * (1 - (metres / 100) * (1 - dbToPowerRatio(gainDb(-table)))), 'length-as-factor'],
      [
        heat(watts, (table * metres) / 100),
        'heat-for-left',
        'That much warms the cable. Asked is what arrives.',
      ],
    ],
    suits: ({ table, metres }) => Math.abs((table * metres) / 100 - 3) > 0.3,
    worked: ({ table, metres, watts }) => [
      `This length loses ${given(table, 'dB')} × ${given(metres, 'm')}/${given(100, 'm')} = ${exactly((table * metres) / 100, 'dB')}.`,
      `${given(watts, 'W')} times ten to the power of −${exactly((table * metres) / 100)}/10 is`,
    ],
    right: 'First the decibels of the length, then the power.',
  }),
  numeric('lines', {
    id: 'cable-by-frequency',
    lesson,
    syllabus: ['6.3'],
    difficulty: 3,
    given: { low: oneOf(0.2, 0.25, 0.3, 0.35, 0.4, 0.5, 0.6), up: oneOf(4, 9, 16) },
    stem: ({ low, up }) =>
      `A cable loses ${given(low, 'dB')} at ${given(10, 'MHz')}. If only the skin of its conductors counts, how much does it lose at ${given(10 * up, 'MHz')}?`,
    answer: ({ low, up }) =>
      // The same root through two entries of a table that the skin alone has made.
      cableLossDb({
        known: [
          { frequencyHz: 10e6, lossDb: low },
          { frequencyHz: 40e6, lossDb: 2 * low },
        ],
        frequencyHz: 10e6 * up,
      }),
    write: fixed('dB', 2),
    wrong: ({ low, up }) => [
      [low * up, 'frequency-linear'],
      [low, 'frequency-unscaled'],
      [low / Math.sqrt(up), 'frequency-inverted'],
      [
        low + powerRatioToDb(up),
        'length-as-factor',
        'The loss in decibels is multiplied by the root of the ratio; the ratio itself is not turned into decibels.',
      ],
    ],
    worked: ({ low, up }) => [
      `The frequency is ${given(10 * up, 'MHz')}/${given(10, 'MHz')} = ${given(up)} times as high, the loss √${given(up)} = ${given(Math.sqrt(up))} times as large.`,
      `${given(Math.sqrt(up))} × ${given(low, 'dB')} =`,
    ],
    right: 'With the root of the frequency, as long as the skin of the conductors leads.',
  }),
  numeric('lines', {
    id: 'pad-by-dc',
    lesson: pads,
    syllabus: ['1.9', '8.1'],
    difficulty: 2,
    given: { before: steps(2, 3.5, 0.1), nominal: oneOf(3, 6, 10, 20), off: steps(-30, 30, 10) },
    suits: ({ off }) => off !== 0,
    stem: ({ before, nominal, off }) =>
      `A pad, terminated in ${given(50, 'ohm')}, gets ${given(before, 'V')} of direct voltage at its input and has ${digits('V', 3)(before * 10 ** (-(nominal + off / 100) / 20))} at its output. It is matched. What is its attenuation?`,
    answer: ({ before, nominal, off }) =>
      amplitudeRatioToDb(before / Number((before * 10 ** (-(nominal + off / 100) / 20)).toPrecision(3))),
    write: fixed('dB', 2),
    typed: { quantity: 'loss', unit: 'dB', tolerance: { of: 'value', size: 0.03 } },
    wrong: ({ before, nominal, off }) => {
      const ratio = 10 ** ((nominal + off / 100) / 20);
      return [
        [powerRatioToDb(ratio), 'ten-for-twenty'],
        [ratio, 'ratio-as-db'],
        [
          before - before / ratio,
          'difference-as-db',
          'Decibels come from the ratio of the two voltages, not from their difference.',
        ],
      ];
    },
    worked: ({ before, nominal, off }) => {
      const after = digits('V', 3)(before * 10 ** (-(nominal + off / 100) / 20));
      return [
        `Volts across equal resistances take twenty times the logarithm: 20 lg (${given(before, 'V')}/${after}) =`,
      ];
    },
    right: 'Twenty times the logarithm of the ratio of the volts, both across fifty ohms.',
  }),
  numeric('lines', {
    id: 'volts-behind-pad',
    lesson: pads,
    syllabus: ['1.9', '8.1'],
    difficulty: 3,
    given: { watts: oneOf(0.5, 1, 2, 2.5, 4, 5, 8, 10), loss: oneOf(6, 10, 14, 20, 26, 30) },
    stem: ({ watts, loss }) =>
      `A power of ${givenPower(watts)} goes into a pad of ${given(loss, 'dB')}. What RMS voltage stands behind it, across ${given(50, 'ohm')}?`,
    answer: ({ watts, loss }) => levelToVolts({ level: levelDbm(level(watts) - loss), resistance: ohms(50) }),
    write: digits('Vrms', 3),
    wrong: ({ watts, loss }) => [
      [
        Math.sqrt(watts * 50) * dbToPowerRatio(gainDb(-loss)),
        'ten-for-twenty',
        'That divides the volts by the factor of the power. The volts fall by its root.',
      ],
      [Math.sqrt(watts * 50), 'link-left-out', 'That is before the pad.'],
      [
        Math.sqrt(watts * 100) * 10 ** (-loss / 20),
        'vp-as-rms',
        'That is the peak. RMS is the root of power times resistance.',
      ],
    ],
    worked: ({ watts, loss }) => [
      `What comes out: ${givenPower(watts)} times ten to the power of −${given(loss)}/10 is ${power(4)(through(watts, loss))}.`,
      `The root of power times resistance: √(${power(4)(through(watts, loss))} × ${given(50, 'ohm')}) =`,
    ],
    right: 'The power behind the pad first, then its volts.',
  }),
];
