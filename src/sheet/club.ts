import { levelDbm, powerW } from '#compute';
import { limits, linkOf, uShaped } from './link.ts';
import type { Link, Sheet } from './sheet.ts';

/**
 * The demonstration measurement: a youth club's home-built hidden transmitter for direction-finding, through a pad and thin
 * coax into a power meter lent by a neighbouring club. Every value is invented.
 */
export function clubSheet(): Sheet {
  return {
    version: 1,
    title: 'The club’s hidden transmitter',
    measurand: {
      power: 'carrier',
      plane: 'at the transmitter’s socket, into 50 Ω',
      conditions: '3.58 MHz, key down, 12.0 V supply, after five minutes’ warm-up',
    },
    specification: { lower: 25.5, upper: 28.5 },
    rule: { kind: 'guardBand', multiplier: 1 },
    readings: [levelDbm(7)],
    damageLevelDbm: levelDbm(20),
    links: clubLinks(),
  };
}

/**
 * From the definition down to the transmitter, which the coax is nearest to: so the pad gets a little less than in the lesson's line of
 * two pads, whose first is at the socket. Another order would be another demonstration, and addresses of this one are out.
 */
function clubLinks(): Link[] {
  return [
    linkOf({
      id: 'national',
      label: 'National standard',
      kind: 'comparison',
      statement: { form: 'expanded', expanded: 0.02, coverageFactor: 2 },
      source: 'certificate',
    }),
    linkOf({
      id: 'laboratory',
      label: 'Calibration laboratory',
      kind: 'comparison',
      statement: { form: 'expanded', expanded: 0.06, coverageFactor: 2 },
      source: 'certificate',
    }),
    linkOf({
      id: 'meter',
      label: 'The meter that was lent',
      kind: 'meter',
      statement: limits(0.25),
      source: 'specification',
    }),
    linkOf({
      id: 'mismatch',
      label: 'Mismatch',
      kind: 'mismatch',
      statement: uShaped(0.16),
      source: 'judged',
    }),
    linkOf({
      id: 'pad',
      label: '20 dB pad',
      kind: 'pad',
      lossDb: 20,
      ratedPowerW: powerW(1),
      statement: limits(0.5),
      source: 'specification',
    }),
    linkOf({
      id: 'coax',
      label: '3 m of thin coax',
      kind: 'cable',
      lossDb: 0.1,
      statement: limits(0.05),
      source: 'specification',
    }),
  ];
}
