import { gainDb, levelDbm } from '#compute';
import { measurementOf } from '../sheet/at-point.ts';
import { bandChainOf } from '../sheet/chain.ts';
import { twoPadsCalibrated, twoPadsSheet } from '../sheet/two-pads.ts';
import { addBackStep, chainSteps, linksKnown } from './chain-steps.ts';
import type { ChainExample, Known, Step } from './example.ts';
import { level, wattsOf } from './said.ts';
import { readingOf } from './sheet-of.ts';

const known = (): readonly Known[] => [
  { what: 'Receiver’s display', value: (style) => level(style, readingOf(twoPadsSheet()), 1) },
  ...linksKnown(twoPadsSheet()),
];

const steps = (): readonly Step[] => [
  addBackStep(
    twoPadsSheet(),
    'Level plus gain is a level. What a pad takes away is added back to what was read behind it.',
  ),
  ...chainSteps(twoPadsSheet()),
];

/** Scenario: a receiver as power meter, behind two pads. Invented data. */
export const twoPadsIntoAReceiver: ChainExample = {
  kind: 'chain',
  slug: 'two-pads-into-a-receiver',
  title: 'Two pads into a receiver',
  summary:
    'A receiver shows −13.4\u00a0dBm behind two 20 dB pads. What leaves the transmitter, how sure is it, and is it in specification?',
  question:
    'My kit transmitter is specified 27\u00a0dBm ±1.5\u00a0dB. I put two 20 dB pads and a short cable between it and my receiver, and the receiver’s display says −13.4\u00a0dBm. What does it really put out, and is that good enough?',
  wanted: 'the carrier power into 50\u00a0Ω at the transmitter’s socket, 28.2\u00a0MHz, key down',
  method:
    'Pads and cable into a receiver. Everything adds in decibels, so the sum is propagated in decibels; watts come last, end by end.',
  space: 'decibels',
  known,
  sheet: twoPadsSheet,
  steps,
  better: {
    sheet: twoPadsCalibrated,
    words:
      'The pads were measured at DC with a multimeter (good at these frequencies, an assumption at VHF), and the receiver’s display was compared with a borrowed reference.',
  },
  mistake: forgottenPad,
  assumptions: [
    'Steady carrier, key down: mean power and peak envelope power are the same.',
    'Power into 50 Ω at the transmitter’s socket.',
    'The pads stay cool enough to keep their value, and the receiver is not overloaded (a third pad would show it).',
    'The stated limits are taken as plain limits, the mismatch as U-shaped, and no two parts share a cause.',
  ],
  cautions: [
    'Key off before reconnecting anything; never key without the load.',
    'The first pad must stand the full power continuously, and mind which end is its input.',
    'Without a pad the receiver’s input may be destroyed: work it out, do not try it.',
  ],
  lesson: 'traceability/the-chain-to-the-definition',
  bench: () => measurementOf(twoPadsSheet()),
};

/** What the answer would be with one pad forgotten in the sum: a factor of a hundred. */
function forgottenPad(): string {
  const sheet = twoPadsSheet();
  const { estimate } = bandChainOf(sheet).result;
  const pad = sheet.links.find(({ id }) => id === 'first');
  const without = levelDbm(estimate - gainDb(pad?.lossDb ?? 0));
  return `Forgetting one pad in the sum gives ${wattsOf('shown', without, 2)} instead of ${wattsOf('shown', estimate, 2)}; 20\u00a0dB is a factor of 100. Subtracting a loss that should be added back, or adding it twice because the instrument already has an offset entered, goes wrong the same way.`;
}
