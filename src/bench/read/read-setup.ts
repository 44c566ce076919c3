import { levelDbm, ohms, powerW, voltsPeak } from '#compute';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { MeterRange, MethodSetup } from '../../sheet/method.ts';
import { strings } from '../strings.ts';
import type { Collector } from './collector.ts';
import { problemStrings } from './problem-strings.ts';
import { SETUP_SPECS, type SetupSpecKey } from './setup-spec.ts';
import { HZ_PER_MHZ } from './spec.ts';

/** The numbers of a setup by their key. */
interface SetupReader {
  readonly entries: SheetEntries;
  readonly collect: Collector;
  readonly number: (key: SetupSpecKey) => number;
  readonly optional: (key: SetupSpecKey) => number | undefined;
}

/** What the chosen method asks for once; what other methods ask for is not read. */
export function readSetup(entries: SheetEntries, collect: Collector): MethodSetup {
  const field = (key: SetupSpecKey) => ({
    path: key,
    label: strings.labels[key],
    text: entries[key],
    spec: SETUP_SPECS[key],
  });
  const reader: SetupReader = {
    entries,
    collect,
    number: (key) => collect.number(field(key)),
    optional: (key) => collect.optional(field(key)),
  };
  switch (entries.method) {
    case 'padsIntoMeter':
      return meterSetup(reader);
    case 'oscilloscope':
      return oscilloscopeSetup(reader);
    case 'peakDetector':
      return detectorSetup(reader);
    case 'inLine':
      return inLineSetup(reader);
    case 'dcSubstitution':
      return { method: 'dcSubstitution', resistance: ohms(reader.number('load')) };
  }
}

function meterSetup({ entries, collect, optional }: SetupReader): MethodSetup {
  const [floor, largest] = [optional('floor'), optional('largest')];
  if (floor !== undefined && largest !== undefined && floor >= largest)
    collect.add({
      path: 'largest',
      label: strings.labels.largest,
      problem: problemStrings.floorAboveLargest,
    });
  return {
    method: 'padsIntoMeter',
    shows: entries.shows,
    ...(floor !== undefined && { floor: levelDbm(floor) }),
    ...(largest !== undefined && { largest: levelDbm(largest) }),
  };
}

function oscilloscopeSetup({ entries, number, optional }: SetupReader): MethodSetup {
  const probe = optional('probeBandwidth');
  const largestPeak = optional('largestPeak');
  return {
    method: 'oscilloscope',
    resistance: ohms(number('load')),
    bandwidthsHz: [number('scopeBandwidth'), ...(probe === undefined ? [] : [probe])].map(
      (megahertz) => megahertz * HZ_PER_MHZ,
    ),
    terminated: entries.terminated === 'yes',
    ...(largestPeak !== undefined && { largestPeak: voltsPeak(largestPeak) }),
  };
}

function detectorSetup({ entries, number, optional }: SetupReader): MethodSetup {
  const largestReverse = optional('largestReverse');
  return {
    method: 'peakDetector',
    resistance: ohms(number('load')),
    diodeDropV: number('drop'),
    curveFromDc: entries.curve === 'yes',
    ...(largestReverse !== undefined && { largestReverse: voltsPeak(largestReverse) }),
  };
}

/** The wave towards the load needs no reflected range: where none is typed, it is that of the forward one. */
function inLineSetup({ entries, number, optional }: SetupReader): MethodSetup {
  const forward: MeterRange = {
    fullScale: powerW(number('forwardScale')),
    percentOfFullScale: number('forwardPercent'),
  };
  const read = entries.delivery === 'incident' ? optional : number;
  return {
    method: 'inLine',
    shows: entries.shows,
    forward,
    reflected: {
      fullScale: powerW(read('reflectedScale') ?? forward.fullScale),
      percentOfFullScale: read('reflectedPercent') ?? forward.percentOfFullScale,
    },
  };
}
