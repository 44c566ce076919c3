import { blankSetup } from '../../sheet/blank-sheet.ts';
import type { SetupEntries } from '../../sheet/entries.ts';
import type { MethodSetup } from '../../sheet/method.ts';
import { tidy, typed } from './typed.ts';

const HZ_PER_MHZ = 1e6;
const level = (value: number | undefined): string => (value === undefined ? '' : `${typed(value)} dBm`);
const withUnit = (value: number | undefined, unit: string): string =>
  value === undefined ? '' : `${typed(value)} ${unit}`;

/** What is set up once, as it would have been typed. */
export function setupEntries(setup: MethodSetup): SetupEntries {
  const blank = blankSetup(setup.method);
  switch (setup.method) {
    case 'padsIntoMeter':
      return { ...blank, shows: setup.shows, floor: level(setup.floor), largest: level(setup.largest) };
    case 'oscilloscope': {
      const [scope, probe] = setup.bandwidthsHz.map((hertz) => withUnit(tidy(hertz / HZ_PER_MHZ), 'MHz'));
      return {
        ...blank,
        load: withUnit(setup.resistance, 'ohm'),
        scopeBandwidth: scope ?? '',
        probeBandwidth: probe ?? '',
        terminated: setup.terminated ? 'yes' : 'no',
        largestPeak: withUnit(setup.largestPeak, 'V'),
      };
    }
    case 'peakDetector':
      return {
        ...blank,
        load: withUnit(setup.resistance, 'ohm'),
        drop: withUnit(setup.diodeDropV, 'V'),
        curve: setup.curveFromDc ? 'yes' : 'no',
        largestReverse: withUnit(setup.largestReverse, 'V'),
      };
    case 'inLine':
      return {
        ...blank,
        shows: setup.shows,
        forwardScale: withUnit(setup.forward.fullScale, 'W'),
        forwardPercent: typed(setup.forward.percentOfFullScale),
        reflectedScale: withUnit(setup.reflected.fullScale, 'W'),
        reflectedPercent: typed(setup.reflected.percentOfFullScale),
      };
    case 'dcSubstitution':
      return { ...blank, load: withUnit(setup.resistance, 'ohm') };
  }
}
