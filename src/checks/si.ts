import {
  CONVENTIONAL_1990,
  caesiumPeriods,
  changeOf2019,
  chargesPerSecond,
  DEFINITION_EVENTS,
  definingConstant,
  inchInMillimetres,
  josephsonConstantHzPerV,
  lightTimeS,
  numberOfConstants,
  thermalNoiseLevel,
  vonKlitzingOhm,
} from '#compute';
import type { Check, CheckSource } from './check.ts';
import { figure } from './figure.ts';

const constants = (): Check => ({
  id: 'si-constants',
  clause: '2.2',
  title: 'the defining constants have the values that the SI gives them',
  status: 'published',
  figures: [
    figure('Δν(Cs), periods in a second', '9 192 631 770', '', () => caesiumPeriods(1)),
    figure('c, metres of light in a second', '299 792 458', '', () => 1 / lightTimeS(1)),
    figure('h', '6.62607015', '10⁻³⁴ J s', () => 1e34 * definingConstant('planck')),
    figure('e', '1.602176634', '10⁻¹⁹ C', () => 1e19 * definingConstant('elementaryCharge')),
    figure('k', '1.380649', '10⁻²³ J/K', () => 1e23 * definingConstant('boltzmann')),
  ],
});

const electrical = (): Check => ({
  id: 'si-electrical',
  clause: 'Appendix 2, electrical units',
  title: 'volt and ohm follow from h and e',
  status: 'published',
  figures: [
    figure('K_J = 2e/h', '483 597.848416984', 'GHz/V', () => josephsonConstantHzPerV() / 1e9),
    figure('R_K = h/e²', '25 812.8074593045', 'Ω', vonKlitzingOhm),
    figure('K_J-90', '483 597.9', 'GHz/V', () => CONVENTIONAL_1990.josephsonHzPerV / 1e9),
    figure('R_K-90', '25 812.807', 'Ω', () => CONVENTIONAL_1990.vonKlitzingOhm),
    figure('change of the volt in 2019', '106.665', '10⁻⁹', () => 1e9 * changeOf2019().volt),
    {
      ...figure('change of the ohm in 2019', '17.793', '10⁻⁹', () => 1e9 * changeOf2019().ohm),
      differs: {
        exact: '17.7937',
        because: 'Cut off where it should be rounded: 17.7937 rounds to 17.794.',
        slip: true,
      },
    },
  ],
});

const ccem = (): Check => ({
  id: 'si-ccem-ohm',
  clause: 'change of the ohm',
  title: 'the change of the ohm was announced before the constants were final',
  status: 'published',
  given: 'CCEM guideline of February 2018, before the values were fixed',
  figures: [
    {
      ...figure('change of the ohm in 2019', '17.84', '10⁻⁹', () => 1e9 * changeOf2019().ohm),
      differs: {
        exact: '17.79',
        because:
          'The guideline was written before the constants were final; those fixed in the SI give 17.79. Too small to be seen on any amateur’s meter, but a reminder to look at the date of a document.',
      },
    },
  ],
});

const lastDigits = { within: 4e-15, because: 'the last bits of a double' };

const derived = (): Check => ({
  id: 'si-derived',
  clause: '2.3.1',
  title: 'an ampere, a metre and other units come down to the defining constants',
  status: 'recomputed',
  figures: [
    {
      ...figure(
        'elementary charges per second in 1 A',
        '6.241509074460763',
        '10¹⁸',
        () => chargesPerSecond(1) / 1e18,
      ),
      tolerance: lastDigits,
    },
    figure('metre in c/Δν(Cs)', '30.6633189884984', '', () => numberOfConstants('metre')),
    figure('Φ₀ = h/(2e)', '2.067833848461929', '10⁻¹⁵ Wb', () => 1e15 / josephsonConstantHzPerV()),
    figure('G₀ = 2e²/h', '7.7480917298637', '10⁻⁵ S', () => 2e5 / vonKlitzingOhm()),
    figure(
      'e/k',
      '11604.51812155',
      'K/V',
      () => definingConstant('elementaryCharge') / definingConstant('boltzmann'),
    ),
  ],
});

const units = (): Check => ({
  id: 'si-units',
  clause: '2.3.1, base units',
  title: 'kilogram, ampere and kelvin as numbers of their defining constants',
  status: 'from memory',
  figures: [
    figure('kilogram in h Δν(Cs)/c²', '1.4755214', '10⁴⁰', () => numberOfConstants('kilogram') / 1e40),
    figure('ampere in e Δν(Cs)', '6.7896868', '10⁸', () => numberOfConstants('ampere') / 1e8),
    figure('kelvin in h Δν(Cs)/k', '2.2666653', '', () => numberOfConstants('kelvin')),
  ],
});

const noise = (): Check => ({
  id: 'si-noise',
  clause: 'k T B',
  title: 'a matched resistor offers −174 dBm of noise in each hertz',
  status: 'recomputed',
  figures: [
    figure('at 290 K', '-173.975187', 'dBm', () => thermalNoiseLevel({ temperatureK: 290, bandwidthHz: 1 })),
    figure('at 293.15 K', '-173.928268', 'dBm', () =>
      thermalNoiseLevel({ temperatureK: 293.15, bandwidthHz: 1 }),
    ),
  ],
});

/** The number in the definition that a unit was given in a year. */
function definedIn(year: number, unit: 'metre' | 'second'): number {
  const event = DEFINITION_EVENTS.find((one) => one.year === year && one.unit === unit);
  return event && 'value' in event ? event.value : Number.NaN;
}

const history = (): Check => ({
  id: 'si-history',
  clause: 'Appendix 4',
  title: 'earlier definitions of metre and second have the numbers that were agreed on',
  status: 'published',
  figures: [
    figure('metre, 1960: wavelengths of krypton', '1 650 763.73', '', () => definedIn(1960, 'metre')),
    figure('second, 1960: seconds in the tropical year 1900', '31 556 925.9747', '', () =>
      definedIn(1960, 'second'),
    ),
    figure('second, 1967: periods of caesium', '9 192 631 770', '', () => definedIn(1967, 'second')),
    figure('metre, 1983: speed of light', '299 792 458', 'm/s', () => definedIn(1983, 'metre')),
  ],
});

const inch = (): Check[] => [
  {
    id: 'si-inch',
    clause: 'refinement of values for the yard and the pound',
    title: 'an inch is 25.4 mm since 1 July 1959',
    status: 'published',
    given: '1 yd = 0.9144 m',
    figures: [figure('inch', '25.4', 'mm', () => inchInMillimetres('international1959'))],
  },
  {
    id: 'si-inch-us',
    clause: '1000/39.37 mm',
    title: 'the older inch of the USA is two parts in a million longer',
    status: 'recomputed',
    figures: [figure('older inch', '25.4000508', 'mm', () => inchInMillimetres('us1893'))],
  },
];

/** The SI and what came before it. */
export function si(): CheckSource[] {
  return [
    {
      id: 'si',
      name: 'The SI',
      citation:
        'BIPM, The International System of Units (SI Brochure), 9th edition, version 3.01, August 2024, and its Appendix 2',
      checks: [constants(), electrical(), derived(), units(), noise(), history()],
    },
    {
      id: 'ccem',
      name: 'The change of 2019',
      citation: 'CCEM guidelines for implementation of the revised SI, February 2018',
      checks: [ccem()],
    },
    {
      id: 'inch',
      name: 'The inch',
      citation: 'Addendum to NBS Circular 572: refinement of values for the yard and the pound, 1959',
      checks: inch(),
    },
  ];
}
