import {
  amplitudeModulated,
  antennaGainOver,
  dcPower,
  efficiency,
  eirp,
  erp,
  gainDb,
  heatInPad,
  levelDbm,
  meanOfPeakEnvelope,
  meanOverPeakEnvelope,
  meantPower,
  peakEnvelopeOfMean,
  powerW,
  upperLevel,
} from '#compute';
import { example, type FormulaTopic, known, letter } from './formula.ts';

const pep = letter('P_\\mathrm{PEP}', 'W', 'peak envelope power');
const mean = letter('\\overline P', 'W', 'mean power');
const ratio = letter('q', '1', 'mean over peak envelope power');
const envelopes = [
  { of: 'radioRegulations', clause: '1.157 and 1.158' },
  { of: 'morseTiming' },
  { of: 'commonPractice' },
] as const;
const level = letter('L', 'dBm', 'level at the socket of the transmitter');
const feeder = letter('g_\\mathrm{f}', 'dB', 'gain of the feeder, negative');
const radiated = { level: 27, feeder: -1, antenna: 2.15 };

/** Which power: over time, radiated, turned into heat. */
export const powerFormulas = {
  meanOverPeakEnvelope: {
    tex: 'q = \\frac{\\overline P}{P_\\mathrm{PEP}}',
    symbols: { result: ratio },
    words:
      'Mean over peak envelope power: 1 for a carrier, 1/2 for a string of dits or two equal tones, 22/50 for the word PARIS.',
    sources: envelopes,
    example: example({}, () => meanOverPeakEnvelope('parisWord')),
  },
  meanOfPeakEnvelope: {
    tex: '\\overline P = q P_\\mathrm{PEP}',
    symbols: { peakEnvelope: pep, envelope: ratio, result: mean },
    words: 'The mean power of a signal from its peak envelope power.',
    sources: envelopes,
    example: example({ peakEnvelope: 2 }, (given) =>
      meanOfPeakEnvelope({ peakEnvelope: powerW(given.peakEnvelope), envelope: 'parisWord' }),
    ),
  },
  peakEnvelopeOfMean: {
    tex: 'P_\\mathrm{PEP} = \\frac{\\overline P}{q}',
    symbols: { mean, envelope: ratio, result: pep },
    words: 'The peak envelope power of a signal from its mean power.',
    sources: envelopes,
    example: example({ mean: 2 }, (given) =>
      peakEnvelopeOfMean({ mean: powerW(given.mean), envelope: 'twoEqualTones' }),
    ),
  },
  dcPower: {
    tex: 'P = U I',
    symbols: {
      volts: letter('U', 'V', 'steady voltage'),
      amperes: letter('I', 'A', 'steady current'),
      result: letter('P', 'W', 'power from the supply'),
    },
    words: 'The power that a steady voltage and current bring.',
    sources: [{ of: 'syllabus', clause: '1.9' }],
    example: example({ volts: 12, amperes: 0.12 }, (given) => dcPower(given)),
  },
  efficiency: {
    tex: '\\eta = \\frac{P_\\mathrm{out}}{P_\\mathrm{in}}',
    symbols: {
      output: letter('P_\\mathrm{out}', 'W', 'mean power that comes out'),
      input: letter('P_\\mathrm{in}', 'W', 'mean power that goes in'),
      result: letter('\\eta', '1', 'efficiency'),
    },
    words: 'How much of what goes in comes out, both as means over the same time.',
    sources: [{ of: 'syllabus', clause: '1.9' }],
    example: example({ output: 0.5, input: 1.44 }, (given) =>
      efficiency({ output: powerW(given.output), input: powerW(given.input) }),
    ),
  },
  meantPower: {
    tex: 'P = \\overline P \\text{ (mean)}, \\quad P = \\frac{\\overline P}{q} \\text{ (PEP)}',
    symbols: {
      mean,
      keying: ratio,
      result: letter('P', 'W', 'power that is meant'),
    },
    words: 'The power that is meant, from the mean that a thermal meter shows.',
    sources: [{ of: 'radioRegulations', clause: '1.157 to 1.159' }],
    example: example({ mean: 0.88 }, (given) =>
      meantPower({
        measurand: { kind: 'peakEnvelope', delivery: 'delivered', plane: 'socket', keying: 'parisWord' },
        mean: powerW(given.mean),
      }),
    ),
  },
  amplitudeModulated: {
    tex: '\\overline P = P_\\mathrm{c} \\left( 1 + \\frac{m^2}{2} \\right), \\quad P_\\mathrm{PEP} = P_\\mathrm{c} (1 + m)^2',
    symbols: {
      carrier: letter('P_\\mathrm{c}', 'W', 'carrier power'),
      depth: letter('m', '1', 'depth of modulation by one tone'),
      mean,
      peakEnvelope: pep,
    },
    words: 'Mean and peak envelope power of a carrier that one tone modulates in amplitude.',
    sources: [{ of: 'radioRegulations', clause: '1.157 to 1.159' }, { of: 'derived' }],
    example: example({ carrier: 1, depth: 1 }, (given) =>
      known(amplitudeModulated({ carrier: powerW(given.carrier), depth: given.depth }).mean),
    ),
  },
  heatInPad: {
    tex: 'P_\\mathrm{heat} = P \\left( 1 - 10^{g/10} \\right)',
    symbols: {
      power: letter('P', 'W', 'power into the pad'),
      gain: letter('g', 'dB', 'gain of the pad, negative'),
      result: letter('P_\\mathrm{heat}', 'W', 'heat in the pad'),
    },
    words: 'The heat in a pad: what goes in and does not come out.',
    sources: [{ of: 'derived', clause: 'conservation of energy' }],
    example: example({ power: 5, gain: -20 }, (given) =>
      heatInPad({ power: powerW(given.power), gain: gainDb(given.gain) }),
    ),
  },
  upperLevel: {
    tex: 'L_\\mathrm{up} = \\max \\left( L_\\mathrm{spec},\\; y + U \\right)',
    symbols: {
      specification: letter('L_\\mathrm{spec}', 'dBm', 'upper limit of the specification'),
      measured: letter('y + U', 'dBm', 'estimate plus expanded uncertainty'),
      result: letter('L_\\mathrm{up}', 'dBm', 'level that cautions are computed with'),
    },
    words:
      'The upper level for cautions: the higher of what is allowed and what was measured with its uncertainty.',
    sources: [{ of: 'commonPractice' }],
    example: example({ specification: 28.5 }, (given) =>
      upperLevel({
        specification: levelDbm(given.specification),
        measured: { estimate: levelDbm(27), expanded: gainDb(2) },
      }),
    ),
  },
  antennaGainOver: {
    tex: 'G_\\mathrm{i} = G_\\mathrm{d} + 2.15\\,\\mathrm{dB}',
    symbols: {
      gain: letter('G_\\mathrm{d}', 'dB', 'gain over a half-wave dipole'),
      result: letter('G_\\mathrm{i}', 'dB', 'gain over an isotropic antenna'),
    },
    words: 'An antenna gain over an isotropic antenna from that over a half-wave dipole, and back.',
    sources: [
      { of: 'radioRegulations', clause: '1.160' },
      { of: 'derived', clause: 'a half-wave dipole gathers 1.64 times, 10 lg 1.64 is 2.15' },
    ],
    example: example({ gain: 0 }, (given) =>
      antennaGainOver('isotropic', { gain: gainDb(given.gain), over: 'halfWaveDipole' }),
    ),
  },
  eirp: {
    tex: 'L_\\mathrm{EIRP} = L + g_\\mathrm{f} + G_\\mathrm{i}',
    symbols: {
      level,
      feeder,
      antenna: letter('G_\\mathrm{i}', 'dB', 'gain of the antenna over an isotropic one'),
      result: letter('L_\\mathrm{EIRP}', 'dBm', 'equivalent isotropically radiated power'),
    },
    words: 'Equivalent isotropically radiated power, as a level.',
    sources: [{ of: 'radioRegulations', clause: '1.161' }],
    example: example(radiated, (given) =>
      eirp({
        level: levelDbm(given.level),
        feeder: gainDb(given.feeder),
        antenna: { gain: gainDb(given.antenna), over: 'isotropic' },
      }),
    ),
  },
  erp: {
    tex: 'L_\\mathrm{ERP} = L + g_\\mathrm{f} + G_\\mathrm{d}',
    symbols: {
      level,
      feeder,
      antenna: letter('G_\\mathrm{d}', 'dB', 'gain of the antenna over a half-wave dipole'),
      result: letter('L_\\mathrm{ERP}', 'dBm', 'effective radiated power'),
    },
    words: 'Effective radiated power, as a level.',
    sources: [{ of: 'radioRegulations', clause: '1.162' }],
    example: example({ level: 27, feeder: -1, antenna: 0 }, (given) =>
      erp({
        level: levelDbm(given.level),
        feeder: gainDb(given.feeder),
        antenna: { gain: gainDb(given.antenna), over: 'halfWaveDipole' },
      }),
    ),
  },
} as const satisfies FormulaTopic;
