import { concept } from '../define.ts';
import type { BankQuestion } from '../types.ts';

const pads = 'measuring/pads-into-a-meter';
const scope = 'measuring/oscilloscope-across-a-load';
const joins = 'measuring/the-meter-joins-the-circuit';
const syllabus = ['10'];

/** Cautions in words. */
export const CAUTION_WORDS: readonly BankQuestion[] = [
  concept('cautions', {
    id: 'where-to-test',
    lesson: pads,
    difficulty: 1,
    stem: 'Into what do you key a transmitter while you measure its power?',
    answer: ['a dummy load that bears the full power', 'It disturbs nobody, and its resistance is known.'],
    wrong: [
      ['the usual antenna, on a quiet frequency', 'test-on-air'],
      ['the open socket, for a short moment only', 'keyed-unloaded'],
      ['any resistor of more than fifty ohms', 'more-ohms-is-safer'],
    ],
    worked: 'A dummy load, rated for the largest power that may come, for as long as you key.',
  }),
  concept('cautions', {
    id: 'earth-of-scope',
    lesson: scope,
    syllabus,
    difficulty: 1,
    stem: 'The ground clip of a mains-driven oscilloscope is connected to what?',
    answer: ['the earth of the mains', 'Clipped to anything else it is a short.'],
    wrong: [
      ['nothing, until it is clipped on', 'clip-anywhere'],
      ['half of the mains voltage', 'clip-anywhere', 'Only where the earth is missing, which must not be.'],
      [
        'the middle of the screen',
        'clip-anywhere',
        'The middle of the screen is where you have moved the trace to.',
      ],
    ],
    worked:
      'The clip goes through the case to the protective earth. A battery-driven one is not earthed; then its clip may be live.',
  }),
  concept('cautions', {
    id: 'lift-the-earth',
    lesson: scope,
    syllabus,
    difficulty: 1,
    stem: 'A hum is on the trace, and somebody wants to tape over the oscilloscope’s earth contact. What do you say?',
    answer: ['no: the earth protects whoever touches the case', 'Look for the loop elsewhere.'],
    wrong: [
      ['yes, as long as the probes are kept well apart', 'earth-lifted'],
      [
        'yes, if the transmitter itself runs on batteries',
        'earth-lifted',
        'The danger comes from the oscilloscope’s own mains part, whatever it measures.',
      ],
      ['yes, but only one person may then touch the case', 'earth-lifted', 'Nobody is a fuse.'],
    ],
    worked:
      'The protective earth is never taken off. A hum has other cures: shorter leads, one common point, a battery for the transmitter.',
  }),
  concept('cautions', {
    id: 'reconnect',
    lesson: pads,
    syllabus,
    difficulty: 1,
    stem: 'A connector in the chain looks loose, and the transmitter is keyed. What comes first?',
    answer: ['key off, and see that the power has gone', 'Then tighten.'],
    wrong: [
      ['tighten it quickly, before it comes off', 'hurry-at-the-bench'],
      [
        'read the meter first, since it still shows',
        'hurry-at-the-bench',
        'A reading through a loose connector is worth nothing, and a key-down without load may cost a transmitter.',
      ],
      ['hold it in place and finish the readings', 'low-power-is-harmless'],
    ],
    worked:
      'Never undo or touch a connector under power: it may burn you, and the transmitter loses its load.',
  }),
  concept('cautions', {
    id: 'beryllium',
    lesson: pads,
    difficulty: 2,
    stem: 'An old power load is to be filed so that it fits. Why not?',
    answer: [
      'it may hold beryllium oxide, whose dust is poisonous',
      'Never file, break or drill such parts.',
    ],
    wrong: [
      [
        'it would no longer have exactly fifty ohms',
        'wrong-danger',
        'Perhaps. But that is not the reason to keep away from it.',
      ],
      ['the warranty of the load would be lost by it', 'wrong-danger', 'There is more at stake than that.'],
      ['the file would become magnetic from the metal', 'wrong-danger', 'That would be a small matter.'],
    ],
    worked:
      'Power loads and transistors for radio frequency may hold beryllium oxide; old oil-filled loads may hold dangerous oils. Leave them closed.',
  }),
  concept('cautions', {
    id: 'rf-burn',
    lesson: joins,
    syllabus,
    difficulty: 1,
    stem: 'Five watts, a wire, and somebody wants to feel whether it is warm. What can happen?',
    answer: ['a deep burn, where the wire has a high voltage', 'Slow to heal, and felt too late.'],
    wrong: [
      ['nothing at all, five watts being too little', 'low-power-is-harmless'],
      [
        'a tickle, as from a battery of some volts',
        'low-power-is-harmless',
        'At a point of high impedance it is a hundred volts and more.',
      ],
      [
        'a shock, but only where the wire is earthed',
        'low-power-is-harmless',
        'The earthed end is the quieter one. The open end is where the volts are.',
      ],
    ],
    worked: 'Radio-frequency burns go deep. Do not touch antennas, open lines or connectors under power.',
  }),
  concept('cautions', {
    id: 'exposure',
    lesson: 'decibels/which-power',
    difficulty: 1,
    stem: 'Where do you find how near people may come to your antenna?',
    answer: [
      'in the rules of your own country, from its regulator',
      'It differs from country to country; whoever holds the licence has to assess it.',
    ],
    wrong: [
      [
        'in the data sheet of the transmitter that you use',
        'wrong-authority',
        'It knows neither your antenna nor your country.',
      ],
      [
        'in no rule, as long as the power is below five watts',
        'low-power-is-harmless',
        'Small power is not outside the rules by itself. Read those of your country.',
      ],
      [
        'on this site, with the power that you have measured',
        'site-gives-limits',
        'This site gives no exposure limits.',
      ],
    ],
    worked:
      'Exposure is assessed under the rules of one’s own country. The mean power, found as here, is one of the numbers that go into it.',
  }),
  concept('cautions', {
    id: 'valve-stage',
    lesson: joins,
    syllabus,
    difficulty: 1,
    stem: 'A valve amplifier has been switched off for some minutes. May a beginner open it to measure inside?',
    answer: [
      'no: its capacitors may still hold a deadly charge',
      'That is work for people who were trained in it.',
    ],
    wrong: [
      ['yes, once the mains plug has been pulled out', 'switched-off-is-dead'],
      [
        'yes, since an interlock discharges it on opening',
        'switched-off-is-dead',
        'Never trust an interlock with your life.',
      ],
      [
        'yes, with one hand in the pocket all the time',
        'switched-off-is-dead',
        'A good habit of trained people, and no training.',
      ],
    ],
    worked:
      'The inside of valve and mains equipment is no place to learn from a page. Leave it to a competent person.',
  }),
  concept('cautions', {
    id: 'better-load',
    lesson: 'decibels/down-the-line',
    difficulty: 2,
    stem: 'A dummy load gets too hot. What is the right cure?',
    answer: ['fifty ohms again, with more watts', 'The resistance is right; the rating is not.'],
    wrong: [
      ['more ohms, with the same watts', 'more-ohms-is-safer'],
      [
        'fewer ohms, with the same watts',
        'more-ohms-is-safer',
        'It would be mismatched, and take more current still.',
      ],
      ['the same load, painted black', 'wrong-danger', 'Colour does not change what it is rated for.'],
    ],
    worked:
      'The load has to be the nominal resistance. For more power it needs a higher rating, for a lower temperature shorter keying too.',
  }),
  concept('cautions', {
    id: 'key-without-load',
    lesson: scope,
    syllabus: ['5.4'],
    difficulty: 1,
    stem: 'Why is a transmitter never keyed with nothing at its socket?',
    answer: ['its last stage may see far more volts than it bears', 'All of the power comes back to it.'],
    wrong: [
      [
        'the socket would radiate more than an antenna does',
        'wrong-danger',
        'It radiates very little. The harm is done inside.',
      ],
      [
        'the battery would be empty within a few minutes',
        'wrong-danger',
        'It may even draw less. The harm is another one.',
      ],
      [
        'the power meter would show a negative reading',
        'wrong-danger',
        'No meter minds. The last stage does.',
      ],
    ],
    worked:
      'Without a load everything is reflected, and the voltage at the last stage can rise beyond its rating. Not even for a moment.',
  }),
  concept('cautions', {
    id: 'unsure',
    lesson: pads,
    difficulty: 1,
    stem: 'This page, the manual of the transmitter and the rules of your country differ on a point of safety. Which comes first?',
    answer: [
      'rules and manual; and when unsure, ask somebody competent',
      'A page knows neither your set nor your bench.',
    ],
    wrong: [
      [
        'this page: its numbers have been worked out to the digit',
        'wrong-authority',
        'Digits are no authority.',
      ],
      [
        'whichever allows more, since the others are overcautious',
        'wrong-authority',
        'The stricter one has a reason that you may not know.',
      ],
      [
        'the opinion that most members of the club have',
        'wrong-authority',
        'They may all have it from the same place.',
      ],
    ],
    worked:
      'Licence conditions, local codes and the equipment’s manual come before anything that is said here.',
  }),
];
