import { recalled, vim, type Word } from './word.ts';

/** What is measured, and how far a measurement may be trusted. */
export const measuringWords = {
  measurand: {
    term: 'measurand',
    means: 'Exactly what you want to know, with every condition that would change it.',
    mind: 'Not “the power” but, say, the carrier power into the load at the socket, key down, at this frequency and supply.',
    defined: recalled('2.3'),
  },
  result: {
    term: 'measurement result',
    means:
      'The values you may give the measurand, with all that is needed to use them: in practice a value and its uncertainty.',
    mind: 'A number alone is a measured value, half of a result.',
    defined: recalled('2.9'),
  },
  'measured-value': {
    term: 'measured value',
    means: 'The one number that a measurement gives for the measurand: what stands before the ±.',
    defined: recalled('2.10'),
  },
  'true-value': {
    term: 'true value',
    means: 'What a perfect measurement of a perfectly defined measurand would give. Nobody has it.',
    mind: 'An idea to think with; any number on paper is a reference value at best.',
    defined: recalled('2.11'),
  },
  'reference-value': {
    term: 'reference value',
    means: 'A value good enough to compare others with, usually from a standard with a smaller uncertainty.',
    defined: recalled('5.18'),
  },
  accuracy: {
    term: 'accuracy',
    means: 'How close measured values lie to a true value. A quality: more or less, never a number.',
    mind: 'Where a data sheet gives “accuracy” a number, it means a maximum permissible error or an uncertainty: find out which.',
    defined: vim('2.13'),
  },
  trueness: {
    term: 'trueness',
    means:
      'How close the mean of very many repeated readings would lie to a reference value. What spoils it is bias.',
    defined: vim('2.14'),
  },
  precision: {
    term: 'precision',
    means: 'How close repeated readings lie to each other; given a number by their standard deviation.',
    mind: 'Precise readings may all be wrong by the same amount.',
    defined: vim('2.15'),
  },
  error: {
    term: 'error',
    also: 'measurement error',
    means:
      'Measured value less reference value. It has a sign, and it can be stated only where there is something better to compare with.',
    mind: 'Not a blunder, and not an uncertainty.',
    defined: vim('2.16'),
  },
  'systematic-error': {
    term: 'systematic error',
    means:
      'The part of an error that stays the same, or changes in a way that could be foreseen, from reading to reading.',
    mind: 'No number of repeats shows it or makes it smaller; a comparison does.',
    defined: vim('2.17'),
  },
  bias: {
    term: 'bias',
    means: 'An estimate of the systematic error; what a correction takes away.',
    defined: vim('2.18'),
  },
  'random-error': {
    term: 'random error',
    means: 'The part of an error that scatters from reading to reading; averaging makes it smaller.',
    defined: vim('2.19'),
  },
  repeatability: {
    term: 'repeatability',
    means:
      'Precision while everything is kept: same person, instrument, place and method, within a short time.',
    defined: recalled('2.21'),
  },
  reproducibility: {
    term: 'reproducibility',
    means:
      'Precision while things change as they do in life: another day, another person, everything reconnected.',
    defined: recalled('2.25'),
  },
  uncertainty: {
    term: 'uncertainty',
    also: 'measurement uncertainty',
    means:
      'A width, never negative, that says how far apart the values lie that the measurand may reasonably have, given what is known.',
    mind: 'It has no sign. It is neither the error, which nobody knows, nor a tolerance, which somebody promised.',
    defined: vim('2.26'),
  },
  'definitional-uncertainty': {
    term: 'definitional uncertainty',
    means:
      'What stays open because the measurand is not described in full: no instrument can make it smaller.',
    defined: recalled('2.27'),
  },
  'type-a': {
    term: 'Type A evaluation',
    means: 'Finding an uncertainty from repeated readings by statistics.',
    mind: 'A way of finding out, not a kind of error: “random” is another matter.',
    defined: recalled('2.28'),
  },
  'type-b': {
    term: 'Type B evaluation',
    means: 'Finding an uncertainty from anything else: certificate, data sheet, experience, physics.',
    defined: recalled('2.29'),
  },
  'standard-uncertainty': {
    term: 'standard uncertainty',
    also: 'u',
    means: 'An uncertainty given as one standard deviation: the form in which parts are combined.',
    defined: recalled('2.30'),
  },
  'combined-uncertainty': {
    term: 'combined standard uncertainty',
    means:
      'The standard uncertainty of the result, from those of its parts, each with its effect on the result.',
    defined: recalled('2.31'),
  },
  budget: {
    term: 'uncertainty budget',
    means:
      'The table of parts: what each may be wrong by, with which shape, what it does to the result, and the sum.',
    defined: recalled('2.33'),
  },
  'target-uncertainty': {
    term: 'target uncertainty',
    means: 'How good the result has to be, decided from what it is for, before anything is measured.',
    defined: recalled('2.34'),
  },
  'expanded-uncertainty': {
    term: 'expanded uncertainty',
    also: 'U',
    means:
      'The combined standard uncertainty times a coverage factor: the half-width that is written behind the ±.',
    mind: 'Means nothing without its coverage factor.',
    defined: vim('2.35'),
  },
  'coverage-interval': {
    term: 'coverage interval',
    means: 'A range that holds the measurand’s value with a stated probability, given what is known.',
    mind: 'The probability is about our knowledge: the transmitter does not wander through the range.',
    defined: recalled('2.36'),
  },
  'coverage-probability': {
    term: 'coverage probability',
    means: 'How sure one may be that the value lies within the coverage interval.',
    defined: vim('2.37'),
  },
  'coverage-factor': {
    term: 'coverage factor',
    also: 'k',
    means:
      'What a combined standard uncertainty is multiplied by to become an expanded one. Two covers about 95 % where the sum is roughly bell-shaped.',
    defined: recalled('2.38'),
  },
  model: {
    term: 'measurement model',
    means: 'The equation that leads from everything that was read or looked up to the measurand.',
    defined: recalled('2.48'),
  },
  'influence-quantity': {
    term: 'influence quantity',
    means:
      'Something that is not to be measured and yet moves the reading: temperature, frequency, supply, the state of a connector.',
    defined: recalled('2.52'),
  },
  correction: {
    term: 'correction',
    means:
      'What is added to a reading to make good for an estimated systematic error. It has an uncertainty of its own, which stays.',
    mind: 'Its sign is opposite to the error’s.',
    defined: recalled('2.53'),
  },
} satisfies Record<string, Word>;
