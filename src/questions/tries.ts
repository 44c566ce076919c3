import { propagate, secondOrder } from '#compute';
import { massModel } from '../sheet/published-models.ts';
import { triedOf } from '../sheet/tried.ts';
import { clubTry, LOAD_OHMS, propagatedOf, READ_VOLTS } from '../sheet/tries.ts';
import { percentText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const milliwatts = (value: number, decimals = 0): string =>
  quantityText('shown', { value, decimals, unit: 'mW' });
const ppm = (value: number): string => quantityText('shown', { value, decimals: 0, unit: 'ppm' });
const mg = (value: number): string => quantityText('shown', { value, decimals: 4, unit: 'mg' });

/** The guess that opens the lesson: the mean of squares is more than the square of the mean. */
export function meanOfWatts(): Question {
  const percent = 20;
  const part = percent / 100;
  const nominal = (1000 * READ_VOLTS ** 2) / LOAD_OHMS;
  // The mean of the square of what is even within 1 - p to 1 + p is 1 + p^2/3.
  const mean = nominal * (1 + part ** 2 / 3);
  const ends = (nominal * ((1 + part) ** 2 + (1 - part) ** 2)) / 2;
  const volts = quantityText('shown', { value: READ_VOLTS, decimals: 1, unit: 'Vrms' });
  const load = quantityText('shown', { value: LOAD_OHMS, decimals: 0, unit: 'ohm' });
  const limits = percentText('shown', { percent, decimals: 0 });
  return {
    id: 'tries-mean-of-watts',
    stem: `A poor voltmeter shows ${volts} across exactly ${load}: ${milliwatts(nominal)}. The volts may really be up to ${limits} more or less, all of it equally likely. Draw a million such voltages by lot and work out the watts of each. What is their mean?`,
    wall: `A poor voltmeter across a load shows ${volts}, which makes ${milliwatts(nominal)}. The volts may be up to ${limits} more or less, all equally likely. Draw a million such voltages by lot and work out the watts of each. What is their mean?`,
    answer: 'b',
    worked: `${milliwatts(mean)}. The watts go with the square: ${limits} more volts add more watts than ${limits} less take away. The mean of the squares is the square of the mean and the variance on top, here a third of the square of ${limits}.`,
    options: [
      {
        id: 'a',
        text: milliwatts(nominal),
        reply:
          'That is the watts of the mean volts. The mean of the watts is another thing as soon as the line is bent.',
      },
      {
        id: 'b',
        text: milliwatts(mean),
        reply: 'A little more than the reading says; and no volt was wrong on the mean.',
      },
      {
        id: 'c',
        text: milliwatts(ends),
        reply:
          'That is the middle between both ends. Most draws lie between them, where there is less to gain.',
      },
      {
        id: 'd',
        text: milliwatts(nominal * (1 + part)),
        reply: `That adds the ${limits} themselves. They go to both sides; only what the bend leaves over remains.`,
      },
    ],
  };
}

/** A loss near nothing. */
export function lossNearNothing(): Question {
  const order = { ...clubTry(), model: 'loss' } as const;
  const tried = triedOf(order);
  const second = propagatedOf({ ...order, order: 'second' });
  return {
    id: 'tries-loss-near-nothing',
    stem: 'What a power meter loses by its own reflection is the sum of two squares, of the real and of the imaginary part. Both were measured and came out as zero, each with a standard uncertainty of 0.005. What may be said of the loss?',
    answer: 'd',
    worked: `The parts are rarely both zero, and a square is never less. The trials have a mean of ${ppm(tried.mean)} and end, for the shortest 95 in a hundred, at ${ppm(tried.shortest.upper)}.`,
    options: [
      {
        id: 'a',
        text: 'It is nothing, and certainly so.',
        reply:
          'So says propagation of first order: the slope of a square is zero at zero. It looks along the slope and sees nothing.',
      },
      {
        id: 'b',
        text: `It is nothing, ±${ppm(second.interval.upper)}.`,
        reply: 'So says propagation of second order. Half of that interval is a loss below nothing, a gain.',
      },
      {
        id: 'c',
        text: 'Nothing can be said before the parts are known better.',
        reply: 'Much can: it can be tried, and computed. The parts are known as being small.',
      },
      {
        id: 'd',
        text: `It is about ${ppm(tried.mean)}, and hardly more than ${ppm(tried.shortest.upper)}.`,
        reply: 'A shape with all of it on one side of nothing, as it should be.',
      },
    ],
  };
}

/** More trials do not make a measurement better. */
export function moreTrials(): Question {
  const u = triedOf(clubTry()).standardUncertainty;
  return {
    id: 'tries-more-trials',
    stem: `Ten thousand trials give a power a standard uncertainty of ${milliwatts(u)}. The same is tried a million times, a hundred times as often. What becomes of it?`,
    answer: 'c',
    worked: `The standard uncertainty stays at ${milliwatts(u)}: it comes from the volts and the load. Only the wobble from run to run becomes less, by the root of a hundred, ten.`,
    options: [
      {
        id: 'a',
        text: `It becomes ${milliwatts(u / 10, 1)}.`,
        reply:
          'That is what the root does to the mean of readings. Trials are no readings: nothing new is measured.',
      },
      {
        id: 'b',
        text: `It becomes ${milliwatts(u / 100, 2)}.`,
        reply: 'Nothing at all goes with the number of trials itself.',
      },
      {
        id: 'c',
        text: `It stays at ${milliwatts(u)}, with a tenth of the wobble.`,
        reply: 'A computer cannot make a voltmeter better.',
      },
      {
        id: 'd',
        text: 'It grows, since rare large errors turn up.',
        reply: 'They turn up more often, and are as rare as before.',
      },
    ],
  };
}

/** A sensitivity of zero is not an influence of none. */
export function slopeOfNothing(): Question {
  const first = propagate({ model: massModel() }).standardUncertainty;
  const more = Math.sqrt(secondOrder({ model: massModel() }).variance);
  return {
    id: 'tries-slope-of-nothing',
    stem: `A weight is weighed in air. What the air lifts depends on its density and on those of two metals; at the density that was measured, all three sensitivities are zero. All else gives ${mg(first)}, the bends of the formula give another ${mg(more)}, and the two know nothing of each other. What is the standard uncertainty?`,
    answer: 'b',
    worked: `${mg(Math.hypot(first, more))}, the root of the sum of both squares. A million trials say the same to the second digit. First order alone would have left out more than a quarter.`,
    options: [
      {
        id: 'a',
        text: mg(first),
        reply:
          'That is first order. A slope of zero says that nothing happens at that very place; the densities are not at that very place.',
      },
      { id: 'b', text: mg(Math.hypot(first, more)), reply: 'Small bends count where slopes are missing.' },
      {
        id: 'c',
        text: mg(first + more),
        reply: 'That adds them as if both were always off in the same direction.',
      },
      { id: 'd', text: mg(more), reply: 'That forgets what propagation of first order did see.' },
    ],
  };
}
