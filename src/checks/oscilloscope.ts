import {
  dbToAmplitudeRatio,
  dbToPercentOfPower,
  gainDb,
  gaussianLossDb,
  ohms,
  peakToPeakOfPower,
  powerW,
  riseTimeS,
  singlePoleLossDb,
} from '#compute';
import type { Check, CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { printedRows } from './rows.ts';

const ROLL_OFF = `
0.1 0.995037 0.496 -0.0432 0.996540 0.346 -0.0301
0.2 0.980581 1.942 -0.1703 0.986233 1.377 -0.1204
0.25 0.970143 2.986 -0.2633 0.978572 2.143 -0.1881
0.3333333 0.948683 5.132 -0.4576 0.962224 3.778 -0.3345
0.5 0.894427 10.557 -0.9691 0.917004 8.300 -0.7526
1.0 0.707107 29.289 -3.0103 0.707107 29.289 -3.0103
2.0 0.447214 55.279 -6.9897 0.250000 75.000 -12.0412`;

/** Displayed amplitude, error in percent and in dB, at a ratio of frequency and bandwidth. */
function shown(lossDb: number): readonly number[] {
  const amplitude = dbToAmplitudeRatio(gainDb(-lossDb));
  return [amplitude, 100 * (1 - amplitude), -lossDb];
}

const rollOff = (): Check[] =>
  checksOfTable({
    id: 'roll-off',
    heading: 'What an oscilloscope shows near its bandwidth',
    clause: '1/√(1 + x²), 2^(−x²/2)',
    status: 'recomputed',
    columns: [
      { what: 'single pole, shown', unit: '' },
      { what: 'single pole, short by', unit: '%' },
      { what: 'single pole, change', unit: 'dB' },
      { what: 'Gaussian, shown', unit: '' },
      { what: 'Gaussian, short by', unit: '%' },
      { what: 'Gaussian, change', unit: 'dB' },
    ],
    rows: printedRows(ROLL_OFF),
    row: (ratio) => `f/B = ${ratio}`,
    title: (ratio) => `at ${ratio} of its bandwidth an oscilloscope shows too little by the exact amount`,
    compute: (ratio, column) =>
      [...shown(singlePoleLossDb(Number(ratio))), ...shown(gaussianLossDb(Number(ratio)))][column] ?? 0,
  });

const guides = (): Check[] => [
  {
    id: 'scope-bandwidth',
    clause: 'bandwidth',
    title: 'at its bandwidth an oscilloscope shows about 30 % too little',
    status: 'published',
    figures: [
      {
        what: 'amplitude short by',
        printed: '30',
        unit: '%',
        compute: () => shown(singlePoleLossDb(1))[1] ?? 0,
        tolerance: { within: 1, because: 'the source says “about”' },
      },
      {
        what: '1 V peak to peak shows as',
        printed: '700',
        unit: 'mVpp',
        compute: () => 1000 * (shown(singlePoleLossDb(1))[0] ?? 0),
        tolerance: { within: 10, because: 'the source says “about”' },
      },
    ],
  },
  {
    id: 'scope-rise-time',
    clause: 'rise time',
    title: 'rise time times bandwidth is 0.35',
    status: 'published',
    figures: [
      { what: 'rise time × bandwidth', printed: '0.35', unit: '', compute: () => riseTimeS(1e6) * 1e6 },
    ],
    note: 'For a single pole exactly ln 9/(2π) = 0.349 699. Steep, brick-wall-like inputs come to about 0.45.',
  },
];

const inverse = (): Check[] => [
  {
    id: 'roll-off-inverse',
    clause: '1/√(1 + x²)',
    title: 'an error of 3 % needs four times the signal’s frequency as bandwidth, not three',
    status: 'recomputed',
    figures: (
      [
        ['short by, at 0.250624 of the bandwidth', '3.0000', 0.250624],
        ['at 0.203059', '2.0000', 0.203059],
        ['at 0.142492', '1.0000', 0.142492],
      ] as const
    ).map(([what, printed, ratio]) => ({
      what,
      printed,
      unit: '%',
      compute: () => shown(singlePoleLossDb(ratio))[1] ?? 0,
    })),
    note: 'Five times is the margin that is often advised: it leaves 1.9 %. Three times leaves 5.1 % for a single pole and 3.8 % for a Gaussian input.',
  },
  {
    id: 'roll-off-power',
    clause: '1/(1 + x²)',
    title: 'an error of volts counts about twice in the power',
    status: 'recomputed',
    given: 'single pole, f/B = 0.25',
    figures: [
      {
        what: 'power short by',
        printed: '5.88',
        unit: '%',
        compute: () => -dbToPercentOfPower(gainDb(-singlePoleLossDb(0.25))),
      },
    ],
  },
];

const SINES = `
0.001 0.63246
0.01 2.0
0.1 6.32456
1 20.0
5 44.7214
10 63.2456
100 200.0`;

const sines = (): Check[] =>
  checksOfTable({
    id: 'sine-50-ohm',
    heading: 'A sine in 50 Ω: power as peak-to-peak volts',
    clause: 'P = Vpp²/400',
    status: 'recomputed',
    columns: [{ what: 'peak to peak', unit: 'V' }],
    rows: printedRows(SINES),
    row: (watts) => `${watts} W`,
    title: (watts) => `${watts} W of a sine in 50 Ω is the exact peak-to-peak voltage`,
    compute: (watts) => peakToPeakOfPower({ power: powerW(Number(watts)), resistance: ohms(50) }),
  });

/** Oscilloscopes and sines. */
export function oscilloscopes(): CheckSource[] {
  return [
    {
      id: 'oscilloscope',
      name: 'Bandwidth of an oscilloscope',
      citation: 'Training guides for oscilloscopes; exact values from the two models of the input',
      checks: [...guides(), ...rollOff(), ...inverse()],
    },
    {
      id: 'sine-50-ohm',
      name: 'Sines in 50 Ω',
      citation: 'Worked out from Joule’s law',
      checks: sines(),
    },
  ];
}
