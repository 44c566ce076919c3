import { beyondTheBandwidth } from './beyond-the-bandwidth.ts';
import { borrowedCalibration } from './borrowed-calibration.ts';
import { clubTransmitter } from './club-transmitter.ts';
import { dirtySignal } from './dirty-signal.ts';
import type { Example } from './example.ts';
import { fourReadingsOneLimit } from './four-readings-one-limit.ts';
import { heatOfDirectCurrent } from './heat-of-direct-current.ts';
import { keyedAndSpoken } from './keyed-and-spoken.ts';
import { loadForgotten } from './load-forgotten.ts';
import { lowOnTheScale } from './low-on-the-scale.ts';
import { oneDiodeTwoLevels } from './one-diode-two-levels.ts';
import { oscilloscopeOnALoad } from './oscilloscope-on-a-load.ts';
import { padAgainstReflections } from './pad-against-reflections.ts';
import { padMeasuredAtDc } from './pad-measured-at-dc.ts';
import { swrOfAWhip } from './swr-of-a-whip.ts';
import { thirtyDecibelsForgotten } from './thirty-decibels-forgotten.ts';
import { twoPadsIntoAReceiver } from './two-pads-into-a-receiver.ts';

/** Every worked example, in the order of the list page: the whole way first, then method by method. */
export const examples: readonly Example[] = [
  clubTransmitter,
  oscilloscopeOnALoad,
  loadForgotten,
  beyondTheBandwidth,
  oneDiodeTwoLevels,
  dirtySignal,
  twoPadsIntoAReceiver,
  padMeasuredAtDc,
  lowOnTheScale,
  swrOfAWhip,
  heatOfDirectCurrent,
  keyedAndSpoken,
  borrowedCalibration,
  fourReadingsOneLimit,
  padAgainstReflections,
  thirtyDecibelsForgotten,
];

/** The example of a slug. @throws RangeError if there is none. */
export function exampleAt(slug: string): Example {
  const example = examples.find((candidate) => candidate.slug === slug);
  if (example === undefined) throw new RangeError(`exampleAt: slug must be that of an example, got ${slug}`);
  return example;
}
