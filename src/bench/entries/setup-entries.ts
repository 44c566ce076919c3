import { blankSetup } from '../../sheet/blank-sheet.ts';
import type { SetupEntries } from '../../sheet/entries.ts';
import type { MethodSetup } from '../../sheet/method.ts';
import { HZ_PER_MHZ } from '../read/spec.ts';
import { tidy, typed, typedWith } from './typed.ts';

/** What is set up once, as it would have been typed. */
export function setupEntries(setup: MethodSetup): SetupEntries {
  const blank = blankSetup(setup.method);
  switch (setup.method) {
    case 'padsIntoMeter':
      return {
        ...blank,
        shows: setup.shows,
        floor: typedWith(setup.floor, 'dBm'),
        largest: typedWith(setup.largest, 'dBm'),
      };
    case 'oscilloscope': {
      const [scope, probe] = setup.bandwidthsHz.map((hertz) => typedWith(tidy(hertz / HZ_PER_MHZ), 'MHz'));
      return {
        ...blank,
        load: typedWith(setup.resistance, 'ohm'),
        scopeBandwidth: scope ?? '',
        probeBandwidth: probe ?? '',
        terminated: setup.terminated ? 'yes' : 'no',
        largestPeak: typedWith(setup.largestPeak, 'V'),
      };
    }
    case 'peakDetector':
      return {
        ...blank,
        load: typedWith(setup.resistance, 'ohm'),
        drop: typedWith(setup.diodeDropV, 'V'),
        curve: setup.curveFromDc ? 'yes' : 'no',
        largestReverse: typedWith(setup.largestReverse, 'V'),
      };
    case 'inLine':
      return {
        ...blank,
        shows: setup.shows,
        forwardScale: typedWith(setup.forward.fullScale, 'W'),
        forwardPercent: typed(setup.forward.percentOfFullScale),
        reflectedScale: typedWith(setup.reflected.fullScale, 'W'),
        reflectedPercent: typed(setup.reflected.percentOfFullScale),
      };
    case 'dcSubstitution':
      return { ...blank, load: typedWith(setup.resistance, 'ohm') };
  }
}
