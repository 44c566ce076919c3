import type { ScopeUse } from '../sheet/scope.ts';
import { beyondUse } from './beyond-the-bandwidth.ts';
import { keyedUse } from './keyed-and-spoken.ts';
import { openUse, terminatedUse } from './load-forgotten.ts';
import { threePads } from './pad-measured-at-dc.ts';
import { whipLine } from './swr-of-a-whip.ts';
import { forgottenLine } from './thirty-decibels-forgotten.ts';

/** Values by the names of the fields of the figure that takes them. */
type Start = Readonly<Record<string, number | string>>;

const HZ_PER_MHZ = 1e6;

const scope = (use: ScopeUse): Start => ({
  peakToPeak: use.peakToPeakV,
  load: use.loadOhm,
  frequency: use.frequencyHz / HZ_PER_MHZ,
  scope: use.scopeHz / HZ_PER_MHZ,
  probe: use.probeHz / HZ_PER_MHZ,
  gain: use.gainPercent,
  gainOf: use.gainOf,
  screen: use.screenV,
  end: use.end,
});

/** What the figure of an example begins with: the example's own numbers, by the names of the widget's fields. */
export const starts = {
  'load-forgotten': () => scope(openUse()),
  'beyond-the-bandwidth': () => scope(beyondUse()),
  'pad-measured-at-dc': (): Start => {
    const { count, padDb, meterDb } = threePads();
    return { count, pad: padDb, meter: meterDb };
  },
  'swr-of-a-whip': (): Start => {
    const { levelDbm, antennaSwr, lossDb, directivityDb } = whipLine();
    return { level: levelDbm, swr: antennaSwr, loss: lossDb, directivity: directivityDb };
  },
  'keyed-and-spoken': (): Start => keyedUse(),
  'thirty-decibels-forgotten': (): Start => {
    const { levelDbm, firstDb, coaxDb, secondDb } = forgottenLine();
    return { level: levelDbm, first: firstDb, coax: coaxDb, second: secondDb };
  },
} as const;

/** What the figure on the wall begins with where that of the page has no number to be changed: the load in its place. */
export const wallStarts = { 'load-forgotten': () => scope(terminatedUse()) } as const;
