import {
  changeOf2019,
  chargesPerSecond,
  constantsOf,
  dbToPercentOfPower,
  dbToPercentOfVolts,
  gainDb,
} from '#compute';
import { directCurrent } from '../sheet/counted-charges.ts';
import { powersMet } from '../sheet/unit-tree.ts';
import { deviationsText, plusMinusText } from '../text/deviation-text.ts';
import { powerOfTenText } from '../text/power-of-ten-text.ts';
import { powerText } from '../text/power-text.ts';
import { changeText, levelText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const count = (value: number): string => powerOfTenText('shown', { value, digits: 3 });
const ohm = (value: number): string => quantityText('shown', { value, decimals: 0, unit: 'ohm' });
const ppm = (fraction: number): string =>
  quantityText('shown', { value: 1e6 * fraction, decimals: 3, unit: 'ppm' });

/** The guess that opens the lesson: which of the numbers behind the units is in a watt? */
export function whatCounts(): Question {
  const left = constantsOf('watt');
  if (!left.has('planck') || left.has('lightSpeed') || left.has('elementaryCharge'))
    throw new RangeError(`whatCounts: a watt must rest on h without c and e, got ${[...left.keys()].join()}`);
  const met = powersMet('watt', 'lightSpeed').map((value) =>
    changeText('shown', { value, decimals: 0, unit: 'none' }),
  );
  return {
    id: 'made-what-counts',
    stem: 'Suppose that one number behind the units were agreed on anew, a little larger, and the others stayed. Which of these would make every watt another one?',
    answer: 'c',
    worked: `A watt comes down to the Planck constant and the caesium frequency, and to nothing else. The speed of light is met on the way, with the powers ${met.join(', ')}: it cancels. The elementary charge is in the ampere and, upside down, in the volt: in their product it cancels too.`,
    options: [
      {
        id: 'a',
        text: 'The number of the speed of light, on which the metre rests.',
        reply:
          'The metre would be another one, and the kilogram with it, just so that a watt stays what it is.',
      },
      {
        id: 'b',
        text: 'The number of the elementary charge, on which the ampere rests.',
        reply: 'The ampere would be another one, and the volt the other way: volt times ampere stays.',
      },
      {
        id: 'c',
        text: 'The number of the Planck constant, on which the kilogram rests.',
        reply: 'It is one of the two constants that are left of a watt.',
      },
      {
        id: 'd',
        text: 'The mass of the metal cylinder that was the kilogram.',
        reply: 'Until 2019, yes. Since then no unit of the SI hangs on an object.',
      },
    ],
  };
}

/** Charges in the direct current that heats as much. */
export function chargesOfWatt({ levelDbm = 30, loadOhm = 50 } = {}): Question {
  const at = { levelDbm, loadOhm, halfDb: 0, counted: 'heating' } as const;
  const { powerW, amperes, charges } = directCurrent(at);
  const crest = directCurrent({ ...at, counted: 'crest' });
  const milli = quantityText('shown', { value: 1000 * amperes.value, decimals: 0, unit: 'mA' });
  const power = powerText('shown', { powerW: powerW.value, digits: 3 });
  return {
    id: 'made-charges',
    stem: `A direct current heats a load of ${ohm(loadOhm)} just as ${levelText('shown', { levelDbm, decimals: 0 })} of RF does. How many elementary charges pass in a second?`,
    answer: 'b',
    worked: `${power} over ${ohm(loadOhm)} is the square of the current; its root is ${milli}. Divided by the elementary charge that is ${count(charges.value)} a second.`,
    options: [
      {
        id: 'a',
        text: count(crest.charges.value),
        reply:
          'That counts the crest of the alternating current, which is the root of two larger and would heat twice as much.',
      },
      { id: 'b', text: count(charges.value), reply: 'Root of power over load, divided by e.' },
      {
        id: 'c',
        text: count(chargesPerSecond(powerW.value)),
        reply: 'That takes the watts for amperes. The load decides how much current a watt needs.',
      },
      {
        id: 'd',
        text: count(2 * crest.charges.value),
        reply: 'That counts from trough to crest: the whole swing, twice the crest.',
      },
    ],
  };
}

/** Exact constants and a reading that is not. */
export function exactConstants({ halfDb = 0.5 } = {}): Question {
  const even = (halfWidth: number, decimals: number, unit: 'dB' | 'percent'): string =>
    plusMinusText('shown', { halfWidth, decimals, unit });
  const ends = (of: typeof dbToPercentOfPower): string =>
    deviationsText('shown', {
      lower: of(gainDb(-halfDb)),
      upper: of(gainDb(halfDb)),
      decimals: 1,
      unit: 'percent',
    });
  const band = even(halfDb, 1, 'dB');
  return {
    id: 'made-exact-constants',
    stem: `The elementary charge is exact. Your level is known to ${band}, your load far better. How well do you know the number of charges a second in the direct current that heats alike?`,
    answer: 'd',
    worked: `The current goes as the root of the power, as volts do: ${band} is ${ends(dbToPercentOfVolts)} of it. Dividing by an exact number adds nothing, and takes nothing away.`,
    options: [
      {
        id: 'a',
        text: 'Exactly: it is divided by an exact number.',
        reply: 'The number below the line is exact. What stands above it came off your meter.',
      },
      {
        id: 'b',
        text: ends(dbToPercentOfPower),
        reply: 'That is the band of the power. The current goes as its root.',
      },
      {
        id: 'c',
        text: even(halfDb, 1, 'percent'),
        reply: 'Half a decibel is not half a percent, of nothing.',
      },
      { id: 'd', text: ends(dbToPercentOfVolts), reply: 'The band of the current, unchanged.' },
    ],
  };
}

/** What the change of 2019 did to a watt. */
export function changeOfWatt(): Question {
  const { volt, ohm: resistance, watt } = changeOf2019();
  return {
    id: 'made-change-of-2019',
    stem: `On 20 May 2019 the laboratories took up new numbers: the same voltage is since stated ${ppm(volt)} larger, the same resistance ${ppm(resistance)} larger. What became of a direct-current power that is found as volts squared over ohms?`,
    answer: 'a',
    worked: `Twice the one, since volts are squared, less the other, since ohms are divided by: ${ppm(watt)}. The power itself stayed; its number moved, and far less than any meter for RF can show.`,
    options: [
      { id: 'a', text: `It is stated ${ppm(watt)} larger.`, reply: 'Twice the volt less the ohm.' },
      {
        id: 'b',
        text: `It is stated ${ppm(volt)} larger.`,
        reply: 'As much as the volt. But volts are squared, so a small change doubles.',
      },
      {
        id: 'c',
        text: `It is stated ${ppm((1 + volt) ** 2 * (1 + resistance) - 1)} larger.`,
        reply:
          'Twice the volt and the ohm on top. The ohm stands below the line: a larger one means less power.',
      },
      {
        id: 'd',
        text: `It is stated ${ppm(volt - resistance)} larger.`,
        reply: 'Volt less ohm is what a current would do. For power the volts count twice.',
      },
    ],
  };
}
