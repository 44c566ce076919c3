import type { EntryForm } from '../sheet/entries.ts';

/** Words of the bench's result. Numbers come in as finished text. */
export const resultStrings = {
  figureName: 'The reading band along this chain',
  figureDescription: (summary: string): string =>
    `From the SI definition at the top to the transmitter’s socket at the foot; firm lines are the specification. ${summary}`,
  undrawn: ({ drawn, all }: { drawn: number; all: number }): string =>
    `${drawn} of ${all} parts are drawn: those that widen the band most. The other ${all - drawn} are in every sum, in every band below them and in the table.`,
  /** What the level with its plus-minus says. */
  expanded: (coverage: string): string =>
    `expanded uncertainty, ${coverage}: an interval that covers about 95 % of the values the level may reasonably have`,
  limits: 'Show the worst case as end marks',
  curve: 'Show the whole distribution as a curve',
  /** What is measured, in one sentence. */
  record: {
    power: { carrier: 'Carrier power', peakEnvelope: 'Peak envelope power', mean: 'Mean power' },
    of: (power: string, plane: string, conditions: string): string =>
      `${[`${power}${plane === '' ? '' : ` ${plane}`}`, conditions].filter((part) => part !== '').join('; ')}.`,
    reading: (reading: string): string => `Reading ${reading}.`,
    readings: ({ list, mean, scatter }: { list: string; mean: string; scatter: string }): string =>
      `Readings ${list}; mean ${mean}, standard deviation ${scatter}.`,
    many: ({ count, mean, scatter }: { count: number; mean: string; scatter: string }): string =>
      `${count} readings, mean ${mean}, standard deviation ${scatter}.`,
    noScatter:
      'One reading tells nothing of its own scatter: none is counted, unless you enter one you know.',
    specified: (range: string): string => `Specified: ${range}.`,
  },
  halved: ({ share, halved, perfect }: { share: string; halved: string; perfect: string }): string =>
    `${share} of the variance. Half as wrong it would leave ${halved}; known perfectly, ${perfect}.`,
  verdict: {
    heading: 'Verdict',
    probability: (probability: string): string =>
      `Probability that it conforms: ${probability}, with nothing known but this measurement.`,
    rule: {
      simple: 'Rule: simple acceptance. The measured level alone decides, so there is no “can’t tell”.',
      guardBand: (multiplier: string): string =>
        `Rule: guard band of ${multiplier} × U, from the interval of the whole distribution.`,
      probability: (required: string): string => `Rule: conformity must be at least ${required} probable.`,
    },
    accepted: (range: string): string => `Acceptance limits: measured ${range} counts as inside.`,
    needed: (expanded: string): string =>
      `With this band no reading at all could count as inside: the method falls short, not the transmitter. It would take ${expanded} or better.`,
    noneAccepted: 'With this band no reading at all could count as inside.',
    zonesName: 'Where the measured level lies among the limits',
  },
  ways: {
    heading: 'Three ways to add up',
    way: 'Way',
    level: 'Level',
    power: 'Power',
    says: 'What it says',
    worst: 'Worst case',
    propagation: 'Propagation',
    whole: 'Whole distribution',
    worstSays: 'Every limit reached at once, all to the same side. As good as the limits.',
    worstOpen: (labels: string): string =>
      `Every limit reached at once, all to the same side; but without a limit: ${labels}. So it guarantees nothing.`,
    propagationSays: (coverage: string): string =>
      `Standard uncertainties added as squares, the sum taken for a bell (${coverage}).`,
    wholeSays: (share: string): string =>
      `The shapes themselves added up; ${share} of the values, equal tails.`,
    wholeNot: 'Cannot be had for parts that are tied together this way.',
  },
  budget: {
    heading: 'Uncertainty budget',
    caption: 'Every part, from the definition down to the transmitter',
    region: 'Uncertainty budget, scrolls sideways',
    part: 'Part',
    loss: 'Loss',
    stated: 'Stated',
    source: 'Source',
    distribution: 'Distribution',
    divisor: 'Divisor',
    uncertainty: 'Standard uncertainty',
    sensitivity: 'Sensitivity',
    contribution: 'Contribution',
    share: 'Share of variance',
    freedom: 'Degrees of freedom',
    scatter: 'Scatter of the readings',
    combined: 'Combined',
    expanded: (coverage: string): string => `Expanded (${coverage})`,
    infinite: '∞',
    distributions: {
      rectangular: 'rectangular',
      triangular: 'triangular',
      arcsine: 'U-shaped',
      trapezoid: 'trapezoidal',
      uncertainLimits: 'curvilinear trapezoid',
      asymmetric: 'rectangular',
      expanded: 'normal',
      coverage: 'normal',
      standard: 'normal',
      readings: 'Student’s t',
      displayStep: 'rectangular',
      halfWithin: 'normal',
    } satisfies Readonly<Record<EntryForm, string>>,
  },
  copy: {
    heading: 'Take it along',
    address:
      'The text carries everything that another person needs to check the result, and the address of this page opens the same sheet.',
    button: 'Copy the result as text',
    done: 'Copied.',
    refused: 'The browser did not allow copying. Here is the text, selected: copy it yourself.',
    area: 'The result as text',
    assumes: 'parts that share no named cause are independent',
    made: 'How Sure Is a Watt?, bench',
  },
} as const;
