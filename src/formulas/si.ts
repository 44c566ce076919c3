import {
  caesiumPeriods,
  changeOf2019,
  chargesPerSecond,
  inchInMillimetres,
  josephsonConstantHzPerV,
  lightTimeS,
  numberOfConstants,
  thermalNoiseLevel,
  vonKlitzingOhm,
} from '#compute';
import { example, type FormulaTopic, letter } from './formula.ts';

const si = [{ of: 'siBrochure', clause: '2.2 and Appendix 2' }] as const;

/** The tree of units down to the defining constants. */
export const siFormulas = {
  josephsonConstantHzPerV: {
    tex: 'K_\\mathrm{J} = \\frac{2 e}{h}',
    symbols: { result: letter('K_\\mathrm{J}', 'Hz/V', 'frequency of a Josephson junction per volt') },
    words: 'The road from a frequency to the volt.',
    sources: si,
    example: example({}, josephsonConstantHzPerV),
  },
  vonKlitzingOhm: {
    tex: 'R_\\mathrm{K} = \\frac{h}{e^2}',
    symbols: { result: letter('R_\\mathrm{K}', 'Ω', 'resistance of the quantum Hall effect') },
    words: 'The road from two constants to the ohm.',
    sources: si,
    example: example({}, vonKlitzingOhm),
  },
  changeOf2019: {
    tex: '\\delta_V = \\frac{K_\\text{J-90}}{K_\\mathrm{J}} - 1, \\quad \\delta_R = \\frac{R_\\mathrm{K}}{R_\\text{K-90}} - 1, \\quad \\delta_P = \\frac{(1 + \\delta_V)^2}{1 + \\delta_R} - 1',
    symbols: {
      volt: letter('\\delta_V', '1', 'change of voltages read by the constant of 1990'),
      ohm: letter('\\delta_R', '1', 'change of resistances read by the constant of 1990'),
      watt: letter('\\delta_P', '1', 'change of powers found as voltage squared over resistance'),
    },
    words: 'How much laboratory volts, ohms and the watts made of them changed on 20 May 2019.',
    sources: si,
    example: example({}, () => changeOf2019().volt),
  },
  chargesPerSecond: {
    tex: '\\dot N = \\frac{I}{e}',
    symbols: {
      amperes: letter('I', 'A', 'direct current'),
      result: letter('\\dot N', '1', 'elementary charges per second'),
    },
    words: 'How many elementary charges a direct current moves in a second.',
    sources: si,
    example: example({ amperes: 0.1995 }, (given) => chargesPerSecond(given.amperes)),
  },
  caesiumPeriods: {
    tex: 'N = t\\, \\Delta\\nu_\\mathrm{Cs}',
    symbols: {
      seconds: letter('t', 's', 'time'),
      result: letter('N', '1', 'periods of the caesium transition'),
    },
    words: 'How many periods of the caesium transition a time lasts.',
    sources: si,
    example: example({ seconds: 1 }, (given) => caesiumPeriods(given.seconds)),
  },
  lightTimeS: {
    tex: 't = \\frac{l}{c}',
    symbols: { metres: letter('l', 'm', 'length'), result: letter('t', 's', 'time that light takes') },
    words: 'How long light takes for a length: the metre is that way round.',
    sources: si,
    example: example({ metres: 0.3 }, (given) => lightTimeS(given.metres)),
  },
  numberOfConstants: {
    tex: '1\\,[Q] = N \\cdot \\Delta\\nu_\\mathrm{Cs}^{a}\\, c^{b}\\, h^{d}\\, e^{f}\\, k^{g}',
    symbols: { result: letter('N', '1', 'how many of the product of its constants the unit is') },
    words:
      'Any unit as a number times its defining constants: a metre is 30.66 times c over the caesium frequency.',
    sources: [{ of: 'siBrochure', clause: '2.3.1' }],
    example: example({}, () => numberOfConstants('metre')),
  },
  thermalNoiseLevel: {
    tex: 'L = 10 \\lg \\frac{k T B}{1\\,\\mathrm{mW}}',
    symbols: {
      temperatureK: letter('T', 'K', 'temperature'),
      bandwidthHz: letter('B', 'Hz', 'bandwidth'),
      result: letter('L', 'dBm', 'level of the noise'),
    },
    words: 'The noise that a matched resistor offers.',
    sources: [
      { of: 'siBrochure', clause: '2.2' },
      { of: 'syllabus', clause: '1.7' },
    ],
    example: example({ temperatureK: 290, bandwidthHz: 2500 }, thermalNoiseLevel),
  },
  inchInMillimetres: {
    tex: '1\\,\\mathrm{in} = \\frac{914.4\\,\\mathrm{mm}}{36} = i',
    symbols: { result: letter('i', 'mm', 'an inch') },
    words: 'An inch since 1 July 1959; a US inch before was 1000/39.37 mm.',
    sources: [{ of: 'yard' }],
    example: example({}, () => inchInMillimetres('international1959')),
  },
} as const satisfies FormulaTopic;
