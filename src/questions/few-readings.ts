import { coverageOf, studentQuantile } from '#compute';
import { COVERAGE_FACTOR, COVERAGE_PROBABILITY } from '../sheet/coverage.ts';
import { wholeMeanOf } from '../sheet/evaluated-readings.ts';
import { clubReadings, EVENING_DBM } from '../sheet/evening.ts';
import { carelessDb, experience, floorDb, summaryOf } from '../sheet/few-readings.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { levelText, numberText, percentText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const even = (halfWidth: number): string => plusMinusText('shown', { halfWidth, decimals: 2, unit: 'dB' });
const size = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'dB' });
const fine = (value: number): string => quantityText('shown', { value, decimals: 3, unit: 'dB' });
const asked = (): string => percentText('shown', { percent: 100 * COVERAGE_PROBABILITY, decimals: 2 });
const halfOf = ({ lower, upper }: { lower: number; upper: number }): number => (upper - lower) / 2;

/** Half the width of the band of a mean. */
function wholeDb(use: Parameters<typeof wholeMeanOf>[0]): number {
  const whole = wholeMeanOf(use);
  return whole ? halfOf(whole.interval) : Number.NaN;
}

/** The guess that opens the lesson: three readings. */
export function threeReadings(): Question {
  const use = clubReadings();
  const { mean, standardDeviation: s = Number.NaN, standardDeviationOfMean: u = Number.NaN } = summaryOf(use);
  const list = EVENING_DBM.slice(0, use.count)
    .map((value) => numberText('shown', { value, decimals: 2 }))
    .join(', ');
  return {
    id: 'readings-three',
    stem: `The transmitter is read three times, everything unplugged and connected again in between: ${list} dBm. The mean is ${levelText('shown', { levelDbm: mean, decimals: 2 })}, the standard deviation ${size(s)}, divided by the root of three ${size(u)}. As far as scatter goes: which band about the mean holds ${asked()}?`,
    wall: `The transmitter is read three times. The mean is ${levelText('shown', { levelDbm: mean, decimals: 2 })}, the standard deviation ${size(s)}, divided by the root of three ${size(u)}. As far as scatter goes: which band about the mean holds about 95\u00a0%?`,
    answer: 'd',
    worked: `${even(wholeDb(use))}. Three readings tell their own scatter badly: it may well be twice as large. Student’s t takes that into account; for three readings it makes ${numberText('shown', { value: coverageOf({ coverageProbability: COVERAGE_PROBABILITY, degreesOfFreedom: 2 }).coverageFactor, decimals: 2 })} out of the usual two.`,
    options: [
      {
        id: 'a',
        text: even(u),
        reply: 'That is one standard uncertainty of the mean, and not even well known.',
      },
      {
        id: 'b',
        text: even(carelessDb(use) ?? Number.NaN),
        reply: 'Two of them would do if the scatter were known from many readings. It is known from three.',
      },
      {
        id: 'c',
        text: even(COVERAGE_FACTOR * s),
        reply: 'That is for a single reading. The mean of three is better than that by the root of three.',
      },
      { id: 'd', text: even(wholeDb(use)), reply: 'Much wider than most would say.' },
    ],
  };
}

/** What a fourfold number of readings does. */
export function fourTimes(): Question {
  const [s, limits] = [0.1, 0.5];
  const many = (count: number): number => COVERAGE_FACTOR * Math.sqrt(s ** 2 / count + limits ** 2 / 3);
  return {
    id: 'readings-four-times',
    stem: `The scatter of one reading is well known: ${size(s)}. The meter’s own limits are ${even(limits)}, the same in every reading. U (k = 2) of a mean of four is ${even(many(4))}. Sixteen readings are taken instead. What is U now?`,
    answer: 'a',
    worked: `${even(many(16))}: only the scatter has been halved, from ${fine(s / 2)} to ${fine(s / 4)}. Next to ${size(limits / Math.sqrt(3))} from the meter nobody notices.`,
    options: [
      { id: 'a', text: even(many(16)), reply: 'Twelve more evenings of work, and nothing to see of them.' },
      {
        id: 'b',
        text: even(many(4) / 2),
        reply: 'That divides the meter’s limits by the root as well. They were the same in all readings.',
      },
      {
        id: 'c',
        text: even(many(4) / 4),
        reply: 'Nothing goes with the number itself, and the meter does not go at all.',
      },
      {
        id: 'd',
        text: even((COVERAGE_FACTOR * s) / 4),
        reply: 'That forgets the meter. It has not become perfect by being read often.',
      },
    ],
  };
}

/** One reading with experience. */
export function oneReading(): Question {
  const { standardDeviation: s, degreesOfFreedom } = experience();
  const t = studentQuantile({ share: (1 + COVERAGE_PROBABILITY) / 2, degreesOfFreedom });
  const degrees = numberText('shown', { value: degreesOfFreedom, decimals: 0 });
  return {
    id: 'readings-one',
    stem: `There is time for one reading only. From five evenings before, five readings each, the scatter of one reading is known: ${size(s)}, with ${degrees} degrees of freedom. What may be said about scatter?`,
    answer: 'c',
    worked: `${even(t * s)}: the old scatter, not divided by anything, times the t of ${degrees} degrees of freedom. That is why it pays to write down what one reads.`,
    options: [
      {
        id: 'a',
        text: 'Nothing: one reading has no scatter.',
        reply: 'It shows none. It has the same as all those before it, if it was taken in the same way.',
      },
      {
        id: 'b',
        text: `${even((t * s) / 5)}: there were ${degreesOfFreedom + 5} readings.`,
        reply: 'Those told the scatter. The level tonight was read once.',
      },
      {
        id: 'c',
        text: even(t * s),
        reply: 'As long as nothing about the procedure has changed since.',
      },
      {
        id: 'd',
        text: even(t * s * Math.sqrt(2)),
        reply: 'The root of two belongs to a difference of two readings. There is one.',
      },
    ],
  };
}

/** What is cured by repeating. */
export function whatIsCured(): Question {
  const use = { ...clubReadings(), count: 10, limitsDb: 0.5 };
  return {
    id: 'readings-what-is-cured',
    stem: 'Ten readings are taken, everything unplugged and connected again each time. Whose part in the uncertainty of their mean becomes less by that?',
    answer: 'b',
    worked: `What differs from reading to reading: here how the connectors happen to meet. Of limits that are the same every time, ${even(use.limitsDb)} say, ${even(floorDb(use))} stay in the band however often it is read.`,
    options: [
      {
        id: 'a',
        text: 'The calibration of the meter.',
        reply: 'It was the same meter with the same certificate ten times.',
      },
      {
        id: 'b',
        text: 'The connectors.',
        reply: 'They meet a little otherwise each time; that is what scatters.',
      },
      {
        id: 'c',
        text: 'The tolerance of the pad.',
        reply: 'The same pad, ten times. Another pad each time would help, and nobody has ten.',
      },
      {
        id: 'd',
        text: 'All of them, by the root of ten.',
        reply: 'That is the mistake to remember: the root is for what scatters.',
      },
    ],
  };
}
