import type { CheckKey } from '../../sheet/check-keys.ts';
import type { MethodKind } from '../../sheet/method.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import { columnSpec } from '../read/point-spec.ts';

/** More readings than this to one check belong into a spreadsheet first. */
export const MOST_CHECK_READINGS = 1000;

/** Below this nothing is allowed that anybody could see. */
const ALLOWED = { kind: 'halfWidthDb', min: 0.001, max: 10, decimals: 3 } as const;
/** Two harmonics of this size have no more volts together than the carrier. */
const HARMONIC = { kind: 'gain', min: -150, max: -6.1, decimals: 1 } as const;
const MINUTES = { kind: 'number', min: 0, max: 10_000, decimals: 0 } as const;

/** What may be typed into a field of the validity checks, by the method. */
export function checkSpec(method: MethodKind, key: CheckKey): ReadSpec {
  switch (key) {
    case 'stepWithout':
    case 'stepWith':
    case 'reconnections':
    case 'warmUpLevels':
      return columnSpec(method, 'readings');
    case 'off':
      return offSpec(columnSpec(method, 'readings'));
    case 'stepPad':
      return { kind: 'halfWidthDb', min: 0.1, max: 60, decimals: 1 };
    case 'stepAllowed':
    case 'offAllowed':
    case 'reconnectionsAllowed':
    case 'warmUpAllowed':
    case 'harmonicsAllowed':
      return ALLOWED;
    case 'warmUpMinutes':
      return MINUTES;
    case 'secondHarmonic':
    case 'thirdHarmonic':
      return HARMONIC;
  }
}

/** Without a signal an instrument may show nothing at all. */
const offSpec = (spec: ReadSpec): ReadSpec =>
  spec.kind === 'level' ? spec : { ...spec, min: 0, decimals: 0 };
