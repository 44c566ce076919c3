import { levelDbm, powerW } from '#compute';
import { withLinkAmount } from './amount.ts';
import { limits, linkOf, uShaped } from './link.ts';
import type { Sheet } from './sheet.ts';

/** A kit transmitter through two pads into a receiver whose level display nobody has checked. Every value is invented. */
export function twoPadsSheet(): Sheet {
  return {
    version: 1,
    title: 'Two pads into a receiver',
    measurand: {
      power: 'carrier',
      plane: 'at the transmitter’s socket, into 50 Ω',
      conditions: '28.2 MHz, key down, pads at room temperature',
    },
    specification: { lower: 25.5, upper: 28.5 },
    rule: { kind: 'guardBand', multiplier: 1 },
    readings: [levelDbm(-13.4)],
    damageLevelDbm: levelDbm(0),
    links: [
      linkOf({
        id: 'receiver',
        label: 'Receiver’s level display',
        kind: 'meter',
        statement: limits(2),
        source: 'judged',
      }),
      linkOf({
        id: 'mismatch',
        label: 'Mismatch',
        kind: 'mismatch',
        statement: uShaped(0.2),
        source: 'judged',
      }),
      linkOf({
        id: 'cable',
        label: 'Cable',
        kind: 'cable',
        lossDb: 0.2,
        statement: limits(0.1),
        source: 'specification',
      }),
      linkOf({
        id: 'second',
        label: 'Second 20 dB pad',
        kind: 'pad',
        lossDb: 20,
        ratedPowerW: powerW(0.5),
        statement: limits(0.5),
        source: 'specification',
      }),
      linkOf({
        id: 'first',
        label: 'First 20 dB pad',
        kind: 'pad',
        lossDb: 20,
        ratedPowerW: powerW(1),
        statement: limits(0.5),
        source: 'specification',
      }),
    ],
  };
}

/** The same after an evening with a multimeter and a borrowed reference: pads and receiver known better. */
export const twoPadsCalibrated = (): Sheet =>
  [
    { id: 'receiver', amount: 0.3 },
    { id: 'second', amount: 0.1 },
    { id: 'first', amount: 0.1 },
  ].reduce((sheet, { id, amount }) => withLinkAmount(sheet, id, amount), twoPadsSheet());
