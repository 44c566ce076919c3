import type { ShownPower } from '../../sheet/method.ts';

/** Words of the method in record and copied text. Numbers come in as finished text. */
export const methodStrings = {
  shows: {
    mean: 'it shows mean power',
    peakEnvelope: 'it shows peak envelope power',
  } satisfies Readonly<Record<ShownPower, string>>,
  padsIntoMeter: (parts: readonly string[]): string =>
    `By pads and cable into a power meter or receiver; ${parts.join('; ')}.`,
  holds: ({ floor, largest }: { floor?: string; largest?: string }): string =>
    floor === undefined
      ? `it holds up to ${largest ?? ''}`
      : largest === undefined
        ? `it holds from ${floor} upwards`
        : `it holds from ${floor} to ${largest}`,
  oscilloscope: ({
    load,
    bandwidths,
    terminated,
  }: {
    load: string;
    bandwidths: string;
    terminated: boolean;
  }): string =>
    `By oscilloscope across a load of ${load}; bandwidth ${bandwidths}; ${terminated ? 'terminated' : 'not terminated'}.`,
  peakDetector: ({ load, drop, curve }: { load: string; drop: string; curve: boolean }): string =>
    `By peak detector across ${load}; diode drop ${drop}, ${curve ? 'from a curve taken with DC' : 'taken as fixed'}.`,
  inLine: ({ forward, reflected, shows }: { forward: string; reflected: string; shows: string }): string =>
    `By in-line directional meter; forward ${forward}; reflected ${reflected}; ${shows}.`,
  range: ({ percent, scale }: { percent: string; scale: string }): string =>
    `${percent} of ${scale} full scale`,
  dcSubstitution: (load: string): string => `By substitution with DC in a load of ${load}.`,
} as const;
