import { levelDbm, levelToVolts, ohms } from '#compute';
import { withLinkAmount } from '../sheet/amount.ts';
import { bandChainOf } from '../sheet/chain.ts';
import { clubSheet } from '../sheet/club.ts';
import { clubMeasurement } from '../sheet/club-measurement.ts';
import { addBackStep, chainSteps, linksKnown } from './chain-steps.ts';
import type { ChainExample, Known, Step } from './example.ts';
import { level, num, wattsOf } from './said.ts';
import { readingOf } from './sheet-of.ts';

const known = (): readonly Known[] => [
  { what: 'The lent meter shows', value: (style) => level(style, readingOf(clubSheet()), 2) },
  ...linksKnown(clubSheet()),
];

const steps = (): readonly Step[] => [
  addBackStep(clubSheet(), 'From the meter back through coax and pad to the socket.'),
  ...chainSteps(clubSheet()),
];

/** The club's hidden transmitter from the definition of the watt to its socket. Invented data. */
export const clubTransmitter: ChainExample = {
  kind: 'chain',
  slug: 'club-transmitter',
  title: 'The club’s transmitter, end to end',
  summary:
    'From the definition of the watt down to the socket of a half-watt fox transmitter: what it gives, how sure that is, and whether it keeps its specification.',
  question:
    'Our youth club’s fox transmitter on 3.58\u00a0MHz is specified 27\u00a0dBm ±1.5\u00a0dB. A lent power meter behind our 20\u00a0dB pad and three metres of thin coax shows 7.0\u00a0dBm. What leaves the socket, how sure are we, and can we write “in specification” on it?',
  wanted:
    'the carrier power into 50\u00a0Ω at the transmitter’s socket: 3.58\u00a0MHz, key down, 12.0\u00a0V supply, after five minutes’ warm-up',
  method:
    'Pad and coax into a power meter that was compared with a better one, and that with a national standard. In decibels every comparison, pad and cable adds one term.',
  space: 'decibels',
  known,
  sheet: clubSheet,
  steps,
  better: {
    sheet: () => withLinkAmount(clubSheet(), 'pad', 0.1),
    words:
      'The pad was measured at DC with a multimeter: 3.58 MHz is low enough for that to hold, and it is an evening’s work.',
  },
  mistake: () => {
    const { links } = clubSheet();
    const { estimate } = bandChainOf(clubSheet()).result;
    const without = levelDbm(estimate - Math.max(...links.map(({ lossDb }) => lossDb)));
    const nominal = levelDbm(27);
    const volts = num('shown', levelToVolts({ level: nominal, resistance: ohms(50) }), 1, 'Vrms');
    return `Leaving the pad out of the sum: ${wattsOf('shown', without, 2)} instead of ${wattsOf('shown', estimate, 2)}. And the transmitter never goes straight into a 50\u00a0Ω oscilloscope: ${wattsOf('shown', nominal, 2)} are ${volts}, all that such an input commonly bears, and at its upper limit it gives more.`;
  },
  assumptions: [
    'Steady carrier, key down: mean power and peak envelope power are the same.',
    'The pad keeps its value while it is warm.',
    'The limits are taken as plain limits, the mismatch as U-shaped, certificates as stated; no two parts share a cause.',
  ],
  cautions: [
    'Into the pad and a load, not on the air, unless your licence allows it.',
    'The pad must stand the full power continuously; key off before reconnecting anything.',
    'The meter is lent: work out the level at its input with the pad and without it.',
  ],
  lesson: 'traceability/the-chain-to-the-definition',
  bench: () => clubMeasurement('padsIntoMeter'),
};
