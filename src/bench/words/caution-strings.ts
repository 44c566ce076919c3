import type { MethodKind } from '../../sheet/method.ts';

/** Words of the cautions. Numbers come in as finished text. */
export const cautionStrings = {
  heading: 'Before you key the transmitter',
  basis: ({ level, power }: { level: string; power: string }): string =>
    `Reckoned with ${level} (${power}), the most that specification or measurement allow, and every loss at the low end of its limits.`,
  basisKeyed: ({ peak, mean }: { peak: string; mean: string }): string =>
    `Reckoned with a peak envelope power of ${peak} for levels and volts and a mean power of ${mean} for heat, the most that specification or measurement allow, and every loss at the low end of its limits.`,
  noBasis:
    'With no upper limit and no number there is nothing to reckon heat and levels with: find the transmitter’s largest power in its manual before you connect anything.',
  load: 'The chain is the transmitter’s load. Key off before you take anything apart or put it together, and never key without the load.',
  noLoad:
    'Nothing in this chain takes power away before the instrument: what it is connected to takes all of it.',
  /** What each method asks for besides. */
  ofMethod: {
    padsIntoMeter:
      'The part nearest to the transmitter takes the most heat: mind which end of a pad is its input, and let it cool.',
    oscilloscope:
      'The ground clip of an oscilloscope is mains earth: connect it to nothing but the earthed side of the load. A 50 Ω input commonly stands 5 V RMS at most; its manual says.',
    peakDetector:
      'The detector sits across the full voltage of the line, where RF burns deep: touch nothing while the key is down.',
    inLine: 'The load comes behind the meter and takes all of the power: connect it first.',
    dcSubstitution:
      'Never RF and DC into the load together. Limit the direct current, set yourself a time, and mind that the load gets hot.',
  } satisfies Readonly<Record<MethodKind, string>>,
  first:
    'The manuals of transmitter, load and instrument, your licence and the rules where you live come first. Where you are not sure, ask somebody licensed and competent.',
  heat: ({ label, incident, heat }: { label: string; incident: string; heat: string }): string =>
    `${label}: gets ${incident} and turns ${heat} of it into heat`,
  rated: (rating: string): string => `rated ${rating}, so it stands that`,
  overrated: (rating: string): string => `rated ${rating} only: too little`,
  unrated: 'enter its rating to have it compared',
  /** What gets the power at the far end, by method. */
  instrument: {
    padsIntoMeter: 'The meter’s input',
    oscilloscope: 'The oscilloscope’s input',
    peakDetector: 'The detector',
    inLine: 'The meter in line',
    dcSubstitution: 'The load',
  } satisfies Readonly<Record<MethodKind, string>>,
  gets: (who: string, what: string): string => `${who} gets ${what}`,
  peak: (volts: string): string => `${volts} (peak of the wave)`,
  reverse: (volts: string): string => `${volts} in reverse on its diode, twice the peak`,
  margin: ({ margin, damage }: { margin: string; damage: string }): string =>
    `${margin} below the ${damage} it stands`,
  beyond: ({ margin, damage }: { margin: string; damage: string }): string =>
    `${margin} above the ${damage} it stands: it would be damaged`,
  within: (largest: string): string => `it stands ${largest}`,
  tooMuch: (largest: string): string => `it stands ${largest} only: it would be damaged`,
  noDamageLevel: 'enter what it stands to have it compared',
  without: ({ label, what }: { label: string; what: string }): string => `Without “${label}” it gets ${what}`,
  atPoint: ({ point, text }: { point: string; text: string }): string => `${point}: ${text}`,
  exceeded: (count: number): string =>
    count === 1
      ? 'One caution concerns this chain: see “Before you key the transmitter”.'
      : `${count} cautions concern this chain: see “Before you key the transmitter”.`,
} as const;
