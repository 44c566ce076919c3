import type { PowerKind } from '#compute';
import type { Delivery, Plane, ShownKeying } from '../../sheet/keyed.ts';
import type { SettingsWords } from '../parts/Settings.tsx';
import type { ShownKeyedSlip } from './spec.ts';

const keying: Readonly<Record<ShownKeying, string>> = {
  keyDown: 'Key held down',
  stringOfDits: 'A string of dits',
  parisWord: 'The word PARIS',
  twoEqualTones: 'Two equal tones',
};
const kind: Readonly<Record<PowerKind, string>> = {
  mean: 'Mean',
  peakEnvelope: 'Peak envelope (PEP)',
  carrier: 'Carrier',
};
const plane: Readonly<Record<Plane, string>> = {
  socket: 'At the socket',
  load: 'At the load, behind the coax',
};
const delivery: Readonly<Record<Delivery, string>> = {
  incident: 'Incident: on its way to the load',
  delivered: 'Delivered: what stays there',
};
const slips: Readonly<Record<ShownKeyedSlip, string>> = {
  none: 'None',
  meanAsPeak: 'A mean reading stated as PEP',
  peakAsMean: 'PEP taken for the mean',
  twiceTheMean: 'PEP taken for twice the mean, always',
  forwardAtSocket: 'Forward at the socket taken for power in the load',
  peakOverMean: 'Efficiency from PEP over mean input',
};

/** Words of the keyed envelope. */
export const strings = {
  name: 'A keyed envelope with its powers',
  description: (summary: string): string =>
    `The power averaged over single cycles of radio frequency, over time, with the peak envelope power, the carrier power and the mean as lines. ${summary}`,
  axes: { power: 'watts, over one cycle', time: 'time' },
  marks: { peak: 'PEP', carrier: 'carrier', mean: 'mean', slipped: 'slip' },
  shares: {
    name: 'What goes in and what comes out',
    supply: (power: string): string => `From the supply: ${power}`,
    load: ({ power, place }: { power: string; place: string }): string => `Incident ${place}: ${power}`,
    places: { socket: 'at the socket', load: 'at the load' },
    out: ({ power, share }: { power: string; share: string }): string => `${power} out, ${share}`,
    heat: (power: string): string => `${power} heat`,
    stays: ({ power, share }: { power: string; share: string }): string => `${power} stays, ${share}`,
    back: (power: string): string => `${power} comes back`,
  },
  measurand: {
    kind: { mean: 'mean power', peakEnvelope: 'peak envelope power', carrier: 'carrier power, key down' },
    delivery: { incident: 'of the wave towards the load', delivered: 'delivered' },
    plane: { socket: 'at the transmitter’s socket', load: 'at the load behind the coax' },
    keying: {
      keyDown: 'key down',
      stringOfDits: 'keyed with a string of dits',
      parisWord: 'keyed with the word PARIS',
      twoEqualTones: 'driven by two equal tones',
    },
  },
  noCarrier: 'No carrier',
  noCarrierWords: 'two tones have none: without modulation nothing comes out',
  meterShows: (power: string): string => `${power} on a meter that averages`,
  ratio: ({ share, db }: { share: string; db: string }): string =>
    `${share} of the PEP, ${db}: what it would show at the socket`,
  same: 'the PEP itself: a steady carrier has but one power',
  efficiency: (share: string): string => `${share} efficiency`,
  efficiencyWords: ({ output, input, heat }: { output: string; input: string; heat: string }): string =>
    `${output} out of ${input} from the supply, both as means; ${heat} stays in the transmitter as heat`,
  noEfficiency: 'Efficiency not known',
  noEfficiencyTones: 'the key-down current does not tell what two tones draw: read it with the tones on',
  noEfficiencyMore: 'more would come out than goes in: one of the numbers is not what it seems',
  stated: (text: string): string => `${text} stated`,
  statedEfficiency: (text: string): string => `${text} efficiency stated`,
  off: ({ slip, truth, error }: { slip: string; truth: string; error: string }): string =>
    `${slip}: ${error}, the truth being ${truth}`,
  nothingToGoBy: 'The slip has nothing to go by here.',
  settings: {
    caption: 'The transmitter, and what is meant',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: { keying, kind, plane, delivery, slip: slips },
    units: { peak: 'W', coax: 'dB', swr: 'none', volts: 'V', amperes: 'A' },
  } satisfies SettingsWords,
  slips,
  table: 'All its powers at once',
  columns: { power: 'Power', incident: 'Incident', delivered: 'Delivered' },
  kinds: kind,
  row: ({ kind: what, place }: { kind: string; place: string }): string => `${what}, ${place}`,
  none: '–',
  note: 'The wave that leaves the socket is taken as it is, whatever the load; a real transmitter may change with it. With the key up it is taken to draw nothing. Invented figures.',
  reset: 'Back to the prepared transmitter',
  noScript:
    'Pulling and typing need JavaScript; the figures, their numbers and the table are complete without it.',
} as const;
