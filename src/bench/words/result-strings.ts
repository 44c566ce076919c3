import type { OtherShape, PowerDelivery, PowerKind } from '#compute';

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
  expandedMore: (coverage: string): string =>
    `expanded uncertainty, ${coverage} of a bell: the sum here ends sooner, so that it covers more of the values the level may reasonably have`,
  expandedLess: (coverage: string): string =>
    `expanded uncertainty, ${coverage} of a bell: the sum here has longer tails, so that it covers less of the values the level may reasonably have`,
  exact: 'nothing is said of any doubt: the bare reading, which no reading is',
  limits: 'Show the worst case as end marks',
  curve: 'Show the whole distribution as a curve',
  /** What is measured, in one sentence. */
  record: {
    power: {
      carrier: 'Carrier power',
      peakEnvelope: 'Peak envelope power',
      mean: 'Mean power',
    } satisfies Readonly<Record<PowerKind, string>>,
    delivery: {
      delivered: 'as this load takes it',
      intoIdeal: 'as an ideal 50 Ω load would take it',
      incident: 'of the wave towards the load',
      net: 'forward less reflected',
    } satisfies Readonly<Record<PowerDelivery, string>>,
    of: (parts: readonly string[]): string => `${parts.filter((part) => part !== '').join('; ')}.`,
    specified: (range: string): string => `Specified: ${range}.`,
    licensed: (range: string): string => `The licence allows ${range}.`,
    noScatter:
      'One reading tells nothing of its own scatter: none is counted, unless you enter one you know.',
  },
  nothing: 'nothing',
  halved: ({ share, halved, perfect }: { share: string; halved: string; perfect: string }): string =>
    `${share} of the variance. Half as wrong it would leave ${halved}; known perfectly, ${perfect}.`,
  halvedOne: ({ share, halved, perfect }: { share: string; halved: string; perfect: string }): string =>
    `${share} of the variance each. One of them half as wrong would leave ${halved}; known perfectly, ${perfect}.`,
  halvedTogether: ({ share, halved, perfect }: { share: string; halved: string; perfect: string }): string =>
    `${share} of the variance with what shares its cause. All half as wrong would leave ${halved}; known perfectly, ${perfect}.`,
  alone: ({ alone, all }: { alone: string; all: string }): string =>
    `The measurement alone is good to ${alone}; with the transmitter’s own spread it is ${all}, and that is what is judged.`,
  verdict: {
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
    licence:
      'A licence limits the power that is really there: stay below its maximum less the uncertainty rather than argue about the uncertainty.',
    zonesName: 'Where the measured level lies among the limits',
  },
  outOfRange: {
    verdict: 'No number',
    none: 'No level, no uncertainty and no verdict are given: another method or another setting has to be found first.',
  },
  outlier: ({
    which,
    value,
    distance,
    count,
    critical,
  }: {
    which: number;
    value: string;
    distance: string;
    count: number;
    critical: string;
  }): string =>
    `Reading ${which}, ${value}, stands ${distance} standard deviations from the mean of all ${count}, where ${critical} is what chance still explains (Grubbs’ test, 5 %). Nothing is removed: leave it out only for a reason that you found, and write the reason down.`,
  outlierIn: ({ column, sentence }: { column: string; sentence: string }): string => `${column}. ${sentence}`,
  ways: {
    heading: 'Three ways to add up',
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
  distribution: {
    name: 'The whole distribution of the level and the specification',
    description: (shares: string): string =>
      `A curve under which equal areas are equally probable. Areas outside the specification are hatched. ${shares}`,
    inside: 'inside',
    outside: 'outside',
    shares: ({ inside, below, above }: { inside: string; below?: string; above?: string }): string =>
      `Of the distribution ${[
        `${inside} lies inside the specification`,
        ...(below === undefined ? [] : [`${below} below it`]),
        ...(above === undefined ? [] : [`${above} above it`]),
      ].join(', ')}.`,
    strip: (by: string, share: string): string => `The strip is the interval that decided: ${by}, ${share}.`,
    stripPlain:
      'The strip is the interval of the whole distribution; under this rule the estimate alone decided.',
  },
  robustness: {
    heading: 'Would the verdict stand?',
    intro:
      'Shapes and coverage factor are choices where nothing better is known. For judging the verdict, never for choosing one.',
    caption: 'The verdict under other choices that could be defended',
    region: 'The verdict under other choices, scrolls sideways',
    taken: 'Taken instead',
    stated: 'as stated',
    shape: (shape: string): string => `all plain limits ${shape}`,
    shapes: {
      rectangular: 'rectangular',
      triangular: 'triangular',
      arcsine: 'U-shaped',
    } satisfies Readonly<Record<OtherShape, string>>,
    factor: (k: string): string => `coverage factor ${k}`,
    interval: 'Interval',
    verdict: 'Verdict',
    probability: 'Conforms with',
    steady: 'The verdict is the same under each of them.',
    unsteady: 'The verdict hangs on the choice: say which was made, and why, whenever you pass it on.',
    pending: '…',
    none: 'none',
  },
} as const;
