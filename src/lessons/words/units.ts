import { type Defined, recalled, type Word } from './word.ts';

/** A term of the SI Brochure, its clause checked against the text. */
const brochure = (entry: string): Defined => ({ in: 'siBrochure', entry, checked: true });

/** Units and what they rest on. */
export const unitWords = {
  'measurement-unit': {
    term: 'measurement unit',
    also: 'unit',
    means:
      'A quantity agreed on, with which others of its kind are compared so that their ratio can be said as a number.',
    defined: recalled('1.9'),
  },
  'base-unit': {
    term: 'base unit',
    means:
      'One of the few units from which a system makes all others: in the SI second, metre, kilogram, ampere, kelvin, mole and candela.',
    mind: 'Since 2019 a way of sorting only: all units alike come down to the defining constants.',
    defined: recalled('1.10'),
  },
  'derived-unit': {
    term: 'derived unit',
    means: 'A unit that is a product of powers of base units: joule, watt, volt, ohm.',
    defined: recalled('1.11'),
  },
  'defining-constant': {
    term: 'defining constant',
    means:
      'One of seven constants whose numbers in SI units were fixed once for all; the units follow from them.',
    mind: 'Its number is exact because it was agreed on, not because it was measured so well.',
    defined: brochure('2.2'),
  },
  realization: {
    term: 'realization of a unit',
    means:
      'Making, by an experiment, a quantity of a known number of units as the definition says, with the uncertainty that the experiment has.',
    mind: 'The definition is exact; no realization is.',
    defined: recalled('2.3', 'siBrochure'),
  },
} satisfies Record<string, Word>;
