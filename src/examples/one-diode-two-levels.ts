import { ohms, powerOfPeak, powerToLevel, voltsPeak } from '#compute';
import { withLinkAmount } from '../sheet/amount.ts';
import { chainOf } from '../sheet/evaluated-chain.ts';
import { limits, linkOf } from '../sheet/link.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { powerWithEndsText } from '../text/power-text.ts';
import { chainSteps } from './chain-steps.ts';
import type { ChainExample, Outcome, Step } from './example.ts';
import { formula, given, half, num, sides, watts, within } from './said.ts';
import { benchOf, readingOf, sheetOf, stated } from './sheet-of.ts';
import { wattsOfLevel } from './watts.ts';

const LOAD_OHM = 50;
const DROP_V = 0.55;
const DROP_KNOWN_V = 0.1;
const LOW_V = 1.85;
const HIGH_V = 16.77;

const into = (peakV: number) => powerOfPeak({ peak: voltsPeak(peakV), resistance: ohms(LOAD_OHM) });
const right = (detectedV: number) => into(detectedV + DROP_V);

/** The detector at one of its two transmitters: all that is in doubt is the drop, as a share of the peak. */
function sheetAt(detectedV: number, specification: Sheet['specification']): Sheet {
  return sheetOf({
    title: 'Two transmitters on one detector',
    conditions: '3.58 MHz, key down',
    reading: powerToLevel(right(detectedV)),
    specification,
    links: [
      linkOf({
        id: 'drop',
        label: 'Diode drop',
        kind: 'meter',
        unit: 'percentOfVolts',
        statement: limits(stated((100 * DROP_KNOWN_V) / (detectedV + DROP_V), 2)),
        source: 'judged',
      }),
    ],
  });
}

const low = (): Sheet => sheetAt(LOW_V, { lower: 15.5, upper: 18.5 });
const high = (): Sheet => sheetAt(HIGH_V, { lower: 33.5, upper: 36.5 });

/** What is lost in decibels where the drop is forgotten. */
const lostDb = (detectedV: number): number => powerToLevel(right(detectedV)) - powerToLevel(into(detectedV));

const levelStep = (id: string, title: string, detectedV: number): Step => ({
  id,
  title,
  formula: formula(
    (style) =>
      `P = (Vdc + Vd)² / (2 R) = (${num(style, detectedV, 2, 'V')} + ${num(style, DROP_V, 2, 'V')})² / (2 × ${num(style, LOAD_OHM, 0, 'ohm')}) = ${watts(style, right(detectedV), 3)}`,
  ),
  words: `A tenth of a volt is ${num('shown', (100 * DROP_KNOWN_V) / (detectedV + DROP_V), 1, 'percent')} of this peak.`,
});

const steps = (): readonly Step[] => [
  levelStep('low', 'The small one', LOW_V),
  levelStep('high', 'The large one', HIGH_V),
  ...chainSteps(low()),
];

function limitsOf(sheet: Sheet): Outcome['value'] {
  const { lower, upper } = chainOf(sheet).result.worstCase.interval;
  const reading = readingOf(sheet);
  const ends = { lowerW: wattsOfLevel(lower), upperW: wattsOfLevel(upper) };
  return (style) =>
    `${powerWithEndsText(style, { powerW: wattsOfLevel(reading), ...ends })} by its limits, ${sides(style, { lower: lower - reading, upper: upper - reading })}`;
}

const also = (): readonly Outcome[] => [
  { name: 'The small transmitter, by the limits of the drop', value: limitsOf(low()) },
  {
    name: 'The large one',
    value: limitsOf(high()),
    stated: { result: chainOf(high()).result, unit: 'dBm', labels: { drop: 'Diode drop' } },
  },
];

/** Scenario: one diode probe on two transmitters. Invented data. */
export const oneDiodeTwoLevels: ChainExample = {
  kind: 'chain',
  slug: 'one-diode-two-levels',
  title: 'One diode, two transmitters',
  summary:
    'The same home-made detector reads 1.85\u00a0V on one transmitter and 16.77\u00a0V on another. Which of the two do you know better?',
  question:
    'My diode probe gives 1.85\u00a0V on the club’s small beacon and 16.77\u00a0V on my portable transmitter, both into 50\u00a0Ω. I add about 0.55\u00a0V for the diode. How sure am I of either?',
  wanted: 'the carrier power into 50\u00a0Ω at the socket of each, key down',
  method:
    'Peak voltage by a diode, its drop added back. The drop is in volts, so it weighs the more the smaller the peak; as a share of the peak it becomes decibels.',
  space: 'decibels',
  known: () => [
    { what: 'Voltmeter, small transmitter', value: given(LOW_V, 2, 'V') },
    { what: 'Voltmeter, large transmitter', value: given(HIGH_V, 2, 'V') },
    {
      what: 'Drop of the diode, judged',
      value: within(DROP_V, 2, 'V', { half: DROP_KNOWN_V, decimals: 2, unit: 'V' }),
    },
    { what: 'Load', value: given(LOAD_OHM, 0, 'ohm') },
  ],
  sheet: low,
  steps,
  also,
  better: {
    sheet: () => withLinkAmount(low(), 'drop', stated((100 * 0.02) / (LOW_V + DROP_V), 2)),
    words: `The detector’s curve was taken with direct current, so that its drop at this voltage is known to ${half('shown', 0.02, 2, 'V')}.`,
  },
  mistake: () =>
    `Forgetting the drop: ${watts('shown', into(LOW_V), 3)} instead of ${watts('shown', right(LOW_V), 3)} on the small transmitter, ${num('shown', 0 - lostDb(LOW_V), 2, 'dB')}; on the large one ${watts('shown', into(HIGH_V), 3)} instead of ${watts('shown', right(HIGH_V), 3)}, ${num('shown', 0 - lostDb(HIGH_V), 2, 'dB')}. The same half volt, and ${num('shown', lostDb(LOW_V) / lostDb(HIGH_V), 0, 'none')} times the error.`,
  assumptions: [
    'A clean sine: the detector follows one peak.',
    'The drop alone is in doubt here; voltmeter, load and harmonics would add to it.',
    'Above about 50 mW: below, the diode leaves the peak law, and no fixed drop is right.',
  ],
  cautions: [
    'Into a dummy load that stands the power continuously.',
    'The diode has to stand twice the peak in reverse: work it out for the larger transmitter before you connect it.',
    'The detected voltage stays on the capacitor for a while.',
  ],
  lesson: 'measuring/peak-detector',
  bench: () =>
    benchOf(low(), {
      setup: { method: 'peakDetector', resistance: ohms(LOAD_OHM), diodeDropV: DROP_V, curveFromDc: false },
      columns: { readings: [LOW_V] },
      instead: {
        drop: {
          stated: { form: 'limits', shape: 'rectangular', halfWidth: DROP_KNOWN_V },
          unit: 'volts',
        },
      },
    }),
};
