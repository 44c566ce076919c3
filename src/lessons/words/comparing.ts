import { recalled, trade, vim, type Word } from './word.ts';

/** Instruments, standards and what links them. */
export const comparingWords = {
  calibration: {
    term: 'calibration',
    means:
      'Comparing an instrument with reference values and finding out, with uncertainties, how what it shows belongs to what is there; then using that to turn readings into results.',
    mind: 'It ends in numbers. It changes nothing on the instrument and does not say whether it is good enough.',
    defined: vim('2.39'),
  },
  'calibration-hierarchy': {
    term: 'calibration hierarchy',
    means:
      'The sequence of calibrations from a reference down to your instrument. Along it the uncertainty can only grow.',
    defined: vim('2.40'),
  },
  traceability: {
    term: 'metrological traceability',
    means:
      'A property of a result: it can be led back to a reference by a documented, unbroken chain of calibrations, each adding to the uncertainty.',
    mind: 'Not a property of an instrument, and not of a sticker on it.',
    defined: vim('2.41'),
  },
  'traceability-chain': {
    term: 'traceability chain',
    means: 'The standards and calibrations by which a result is led back to its reference, one by one.',
    defined: vim('2.42'),
  },
  verification: {
    term: 'verification',
    means:
      'Objective evidence that something meets stated requirements: a verdict against a limit, no number.',
    mind: 'Not a calibration, though it may use the numbers of one.',
    defined: vim('2.44'),
  },
  validation: {
    term: 'validation',
    means: 'Verification that the requirements themselves suit the use that is meant.',
    defined: recalled('2.45'),
  },
  comparability: {
    term: 'metrological comparability',
    means:
      'Two results can be compared because both lead back to the same reference. It does not say that they agree.',
    defined: vim('2.46'),
  },
  compatibility: {
    term: 'metrological compatibility',
    means:
      'Two results differ by less than a chosen multiple of the uncertainty of their difference: no sign of disagreement.',
    defined: recalled('2.47'),
  },
  adjustment: {
    term: 'adjustment',
    means:
      'Operations on an instrument so that it shows prescribed values: turning the screw, storing new constants.',
    mind: 'It needs a calibration before and another after: as found, as left.',
    defined: vim('3.11'),
  },
  'zero-adjustment': {
    term: 'zero adjustment',
    means: 'An adjustment that makes the instrument show nothing where there is nothing.',
    defined: recalled('3.12'),
  },
  indication: {
    term: 'indication',
    means: 'What the instrument shows.',
    defined: recalled('4.1'),
  },
  resolution: {
    term: 'resolution',
    means: 'The smallest change of what is measured that shows at all.',
    mind: 'Digits on a display are resolution, not accuracy.',
    defined: vim('4.14'),
  },
  'display-resolution': {
    term: 'resolution of a display',
    means: 'The smallest step by which what is shown can differ.',
    defined: vim('4.15'),
  },
  stability: {
    term: 'stability',
    means: 'How well an instrument keeps its properties as time goes by.',
    defined: recalled('4.19'),
  },
  'instrumental-bias': {
    term: 'instrumental bias',
    means: 'The mean of repeated indications less the reference value.',
    defined: vim('4.20'),
  },
  drift: {
    term: 'drift',
    also: 'instrumental drift',
    means: 'A change of what an instrument shows that goes on with time and is due to the instrument itself.',
    mind: 'It is why a calibration has a date.',
    defined: vim('4.21'),
  },
  'accuracy-class': {
    term: 'accuracy class',
    means: 'A class of instruments that keep to stated requirements on their errors under stated conditions.',
    defined: vim('4.25'),
  },
  mpe: {
    term: 'maximum permissible error',
    also: 'MPE, limit of error',
    means: 'The most that a specification lets an instrument be wrong by, in either direction.',
    mind: 'A promise for every instrument of a kind. Where this one stands within it, only a comparison tells.',
    defined: vim('4.26'),
  },
  standard: {
    term: 'measurement standard',
    also: 'etalon',
    means: 'Something that realises a quantity with a stated value and uncertainty, to be compared with.',
    defined: vim('5.1'),
  },
  'national-standard': {
    term: 'national standard',
    means:
      'A standard that an authority has named as the base for assigning values to others in its country.',
    defined: recalled('5.3'),
  },
  'primary-standard': {
    term: 'primary standard',
    means:
      'A standard whose value comes from a primary method or an agreed object, not from another standard of the same quantity.',
    defined: vim('5.4'),
  },
  'secondary-standard': {
    term: 'secondary standard',
    means: 'A standard calibrated against a primary one.',
    defined: vim('5.5'),
  },
  'reference-standard': {
    term: 'reference standard',
    means: 'The best standard in a place or an organisation, by which the others there are calibrated.',
    defined: recalled('5.6'),
  },
  'working-standard': {
    term: 'working standard',
    means: 'The standard in daily use, by which instruments are calibrated or verified.',
    defined: recalled('5.7'),
  },
  'travelling-standard': {
    term: 'travelling standard',
    means: 'A standard made to be carried between places.',
    defined: recalled('5.8'),
  },
  'transfer-device': {
    term: 'transfer device',
    means:
      'A go-between by which standards are compared. It has to stay put during the comparison, and need not keep its value long.',
    defined: recalled('5.9'),
  },
  'gauge-block': {
    term: 'gauge block',
    means:
      'A block of hard material with two flat, parallel faces at a stated distance, made to be compared with or to be built into a longer one.',
    mind: 'Its nominal length is its name. Its own length is the nominal one and a deviation, which a certificate gives.',
    defined: trade(),
  },
  wringing: {
    term: 'wringing',
    means:
      'Sliding two clean, flat faces together until they hold to each other, with a film of some nanometres between.',
    defined: trade(),
  },
} satisfies Record<string, Word>;
