import type { LinePart } from '../../sheet/line.ts';
import type { SettingsWords } from '../parts/Settings.tsx';
import type { LeftOut, ShownLineSlip } from './spec.ts';

const slips: Readonly<Record<ShownLineSlip, string>> = {
  none: 'None',
  forgotten: 'Pads and coax forgotten',
  subtracted: 'Losses subtracted from the reading',
  twice: 'Losses added back twice',
  reference: 'dBi and dBd mixed up',
};

const leftOut: Readonly<Record<LeftOut, string>> = {
  none: 'Nothing',
  first: 'The first pad',
  coax: 'The coax',
  second: 'The second pad',
};

const parts: Readonly<Record<LinePart, string>> = {
  amplifier: 'Amplifier',
  first: 'First pad',
  coax: 'Coax',
  second: 'Second pad',
};

const within: Readonly<Record<LinePart, string>> = {
  amplifier: 'the amplifier',
  first: 'the first pad',
  coax: 'the coax',
  second: 'the second pad',
};

/** Words of the level diagram. */
export const strings = {
  name: 'Levels down the line',
  description: (summary: string): string =>
    `A staircase from the transmitter’s socket at the top down to the end of the line: each part moves the level to the left or to the right. ${summary}`,
  parts,
  leftOut,
  within,
  slips,
  socket: 'At the socket',
  input: 'At the input',
  eirp: 'Antenna: EIRP',
  erp: 'Over a dipole: ERP',
  bypassed: 'bypassed',
  heat: ({ gain, heat }: { gain: string; heat: string }): string => `${gain}, up to ${heat} of heat`,
  tooMuch: ({ gain, power }: { gain: string; power: string }): string => `${gain}: TOO MUCH, up to ${power}`,
  inputDetail: (level: string): string => `at most ${level}`,
  inputTooMuch: (level: string): string => `TOO MUCH: up to ${level}`,
  atInput: ({ loss, most }: { loss: string; most: string }): string =>
    `at the input, ${loss} from the socket; at most ${most}, with the transmitter at its upper limit and every part at its lowest attenuation`,
  below: (margin: string): string => `${margin} below what damages the input`,
  above: (margin: string): string => `${margin} above what damages the input`,
  heatIn: ({ part, rated }: { part: string; rated: string | undefined }): string =>
    rated === undefined
      ? `of heat at most in ${part}`
      : `of heat at most in ${part}, which takes ${rated} at its input`,
  noHeat: 'No heat',
  noHeatWords: 'no part of this line takes anything away',
  nothingLeftOut: 'Nothing left out',
  nothingLeftOutWords: 'Choose a part below: what would the sum say without it?',
  without: ({ level, part }: { level: string; part: string }): string => `${level} without ${part}`,
  calculation: 'This is a calculation. Never try it.',
  getsTooMuch: ({ part, power, rated }: { part: string; power: string; rated: string }): string =>
    `${part} would get ${power} and takes ${rated}`,
  stated: (level: string): string => `${level} stated`,
  off: ({ slip, error }: { slip: string; error: string }): string => `${slip}: ${error}`,
  otherEnd: 'is a slip at the other end of a line: change what the line ends in.',
  radiated: {
    eirp: 'equivalent isotropically radiated power: what an isotropic radiator would need to be as strong in this direction',
    erp: (step: string): string =>
      `effective radiated power: the same counted from a half-wave dipole, ${step} less`,
  },
  settings: {
    caption: 'The line and its end',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      end: { instrument: 'An instrument', antenna: 'An antenna' },
      over: { isotropic: 'An isotropic radiator (dBi)', halfWaveDipole: 'A half-wave dipole (dBd)' },
      without: leftOut,
      slip: slips,
    },
    units: {
      level: 'dBm',
      amplifier: 'dB',
      first: 'dB',
      coax: 'dB',
      second: 'dB',
      damage: 'dBm',
      antenna: 'dB',
    },
  } satisfies SettingsWords,
  table: 'Down the line, part by part',
  columns: {
    part: 'Part',
    gain: 'Gain',
    after: 'Level behind it',
    heat: 'Heat at most',
    rated: 'May go in',
  },
  leftTable: 'What the sum says if one part were left out (a calculation, never a demonstration)',
  leftColumns: { part: 'Left out', level: 'At the input, at most', against: 'Against its damage level' },
  none: '–',
  note: ({ above, first, second }: { above: string; first: string; second: string }): string =>
    `A firm line with barbs is what a part takes at its input: the level has to arrive on the barbs’ side. Dash-dotted is the line without the part that is left out, or what a slip states; broken, the line before your change. Heat and “at most” are reckoned with the transmitter ${above} above its level and what lies before a part at its lowest attenuation, the part that gets hot at its highest; the pads take ${first} and ${second} at their inputs. Invented figures: your data sheets decide. An amplifier’s own limits are not drawn.`,
  reset: 'Back to the prepared line',
  noScript:
    'Pulling and typing need JavaScript; the figure, its numbers and its tables are complete without it.',
} as const;
