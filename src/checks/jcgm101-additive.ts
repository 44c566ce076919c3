import { type Distribution, evaluate, normal, rectangular } from '#compute';
import type { Check, Figure } from './check.ts';
import { figure } from './figure.ts';

/** Inputs of one kind after another, added up three ways. */
const added = (distributions: readonly Distribution[]) =>
  evaluate({
    model: {
      kind: 'sum',
      constant: 0,
      inputs: distributions.map((distribution, i) => ({
        id: `x${i + 1}`,
        distribution,
        degreesOfFreedom: Number.POSITIVE_INFINITY,
      })),
      sensitivities: distributions.map(() => 1),
    },
  });

const times = (count: number, distribution: Distribution): Distribution[] =>
  Array.from({ length: count }, () => distribution);

const fourNormal = () => added(times(4, normal({ mean: 0, standardDeviation: 1 })));
const ofUnit = (u: number) => rectangular({ lower: -u * Math.sqrt(3), upper: u * Math.sqrt(3) });
const fourRectangular = () => added(times(4, ofUnit(1)));
const oneLarge = () => added([...times(3, ofUnit(1)), ofUnit(10)]);

type Evaluated = ReturnType<typeof evaluate>;

/** An end of the 95 % interval of the whole distribution. */
function end({ whole }: Evaluated, which: 'lower' | 'upper'): number {
  return 'unavailable' in whole ? Number.NaN : whole.symmetric[which];
}

/** Both ends of the interval by propagation and of the whole distribution, against print. */
function ends(of: () => Evaluated, propagation: string, whole: string): Figure[] {
  return [
    figure('propagation, lower end', `-${propagation}`, '', () => of().propagation.interval.lower),
    figure('propagation, upper end', propagation, '', () => of().propagation.interval.upper),
    figure('whole distribution, lower end', `-${whole}`, '', () => end(of(), 'lower')),
    figure('whole distribution, upper end', whole, '', () => end(of(), 'upper')),
  ];
}

/** The figure that adds links, with four of them and 95 %, its sizes standard uncertainties. */
const tried = (links: string): NonNullable<Check['tried']> => ({
  path: '/learn/stacking/the-whole-shape/',
  state: `n=4&co=95&sz=u&${links}&v=1`,
});

/** JCGM 101, 9.2: sums of four quantities. */
export const additive = (): Check[] => [
  {
    id: 's1-9.2.2',
    clause: '9.2.2',
    title: 'four normal quantities add to a normal one: all ways agree',
    status: 'published',
    given: 'four with u = 1; 95 %',
    figures: [
      { what: 'u', printed: '2.00', unit: '', compute: () => fourNormal().propagation.standardUncertainty },
      ...ends(fourNormal, '3.92', '3.92'),
    ],
    tried: tried('a=1&as=n&b=1&bs=n&c=1&cs=n&d=1&ds=n'),
  },
  {
    id: 's1-9.2.3',
    clause: '9.2.3',
    title: 'four rectangular quantities of one size reach less far than propagation says',
    status: 'published',
    given: 'four with u = 1; 95 %; print has the second pair from a simulation',
    figures: ends(fourRectangular, '3.92', '3.88'),
    tried: tried('a=1&b=1&c=1&d=1'),
  },
  {
    id: 's1-9.2.4',
    clause: '9.2.4',
    title: 'one large rectangular quantity dominates, and propagation overstates the interval by a sixth',
    status: 'published',
    given: 'three with u = 1, one with u = 10; 95 %; print has the second pair from a simulation',
    figures: [
      { what: 'u', printed: '10.1', unit: '', compute: () => oneLarge().propagation.standardUncertainty },
      ...ends(oneLarge, '19.9', '17.0'),
    ],
    tried: tried('a=10&b=1&c=1&d=1'),
    note: 'Runs of the simulation in print give u as 10.1 or 10.2; exactly it is 10.1489.',
  },
  {
    id: 's1-9.2-exact',
    clause: '9.2.3, 9.2.4',
    title: 'the whole distribution ends where the exact quantiles are',
    status: 'recomputed',
    figures: [
      {
        what: 'four rectangular: 2√3 (2 − (3/5)^¼)',
        printed: '3.87940674',
        unit: '',
        compute: () => end(fourRectangular(), 'upper'),
        tolerance: { within: 1e-6, because: 'the grid of the whole distribution' },
      },
      {
        what: 'one large',
        printed: '17.015814',
        unit: '',
        compute: () => end(oneLarge(), 'upper'),
        tolerance: { within: 1e-5, because: 'the grid of the whole distribution' },
      },
    ],
  },
];
