import {
  type BandResult,
  type BlockStack,
  differenceModel,
  estimateOf,
  type GaugeBlock,
  REFERENCE_CELSIUS,
  type Statement,
  type SumModel,
  stackModel,
} from '#compute';
import { bandOf } from './band.ts';
import { limits } from './link.ts';

/** What is counted of the blocks: their nominal lengths alone, the limits of their grade, a certificate each, or one certificate for the set. */
export const KNOWN = ['nominal', 'grade', 'own', 'shared'] as const;
export type Known = (typeof KNOWN)[number];

/** What is counted of warmth: nothing, or the temperature of each side. */
export const COUNTED = ['nothing', 'each'] as const;
export type Counted = (typeof COUNTED)[number];

/** A stack of gauge blocks, wrung together, and one block of the same nominal length. All of it is invented. */
export interface Comparison {
  /** Central lengths of the blocks of the stack less their nominal lengths, by the certificate, in micrometres. One to four blocks. */
  readonly deviationsUm: readonly number[];
  /** The same of the single block. */
  readonly singleUm: number;
  /** What the certificate of the set is itself off by, the same at every block of it, in micrometres. */
  readonly offUm: number;
  readonly stackC: number;
  readonly singleC: number;
  /** Linear coefficients of expansion, in parts per million per kelvin. */
  readonly stackPpm: number;
  readonly singlePpm: number;
  readonly known: Known;
  readonly counted: Counted;
}

/** Nominal length of either side, in millimetres. */
export const NOMINAL_MM = 100;
/** One wringing film, and the limits to either side of it, in micrometres: common practice, no source. */
export const FILM_UM = 0.01;
/** Expanded uncertainty (k = 2) of every deviation on a certificate, in micrometres. */
export const CERTIFICATE_UM = 0.1;
/** Limits of a thermometer that lies on each side, in kelvin. */
const THERMOMETER_K = 0.1;
/** Limits of a coefficient of expansion, in parts per million per kelvin (ISO 3650 for steel, from memory). */
const EXPANSION_PPM = 1;
/** Coefficient of expansion of steel blocks, in parts per million per kelvin (GUM H.1; ISO 3650, from memory). */
export const STEEL_PPM = 11.5;

const STACKS_MM = [[100], [60, 40], [50, 30, 20], [40, 30, 20, 10]] as const;

/** Nominal lengths of a stack of so many blocks, longest first. @throws RangeError unless there are one to four. */
export function lengthsOf(count: number): readonly number[] {
  const lengths = STACKS_MM[count - 1];
  if (lengths === undefined) throw new RangeError(`lengthsOf: count must be 1 to 4, got ${count}`);
  return lengths;
}

/** Limits of the deviation for a block of grade 1, by the end of each range of lengths, in millimetres and micrometres. */
const GRADE_1 = [
  [10, 0.2],
  [25, 0.3],
  [50, 0.4],
  [75, 0.5],
  [100, 0.6],
] as const;

/** Limit of the deviation of a block of grade 1, in micrometres. Source: ISO 3650, from memory. @throws RangeError above 100 mm. */
export function gradeLimitUm(lengthMm: number): number {
  const row = GRADE_1.find(([most]) => lengthMm <= most);
  if (row === undefined) throw new RangeError(`gradeLimitUm: lengthMm must be up to 100, got ${lengthMm}`);
  return row[1];
}

/** The club's comparison on its first evening: the stack is still warm from being wrung together. */
export const clubBlocks = (): Comparison => ({
  deviationsUm: [0.12, -0.05, 0.08],
  singleUm: 0.1,
  offUm: 0,
  stackC: 22,
  singleC: 20,
  stackPpm: STEEL_PPM,
  singlePpm: STEEL_PPM,
  known: 'own',
  counted: 'nothing',
});

/** One side as it is built into a model. */
interface Side {
  readonly blocks: readonly GaugeBlock[];
  readonly filmUm?: Statement;
  readonly celsius: number;
  readonly ppm: number;
  /** Limits of temperature and coefficient. */
  readonly within: { readonly kelvin: number; readonly ppm: number };
}

const NOTHING = { kelvin: 0, ppm: 0 };

function sideModel({ blocks, filmUm = limits(0), celsius, ppm, within }: Side): SumModel {
  const stack: BlockStack = {
    blocks,
    filmUm: { value: FILM_UM, statement: filmUm },
    temperatureC: { value: celsius, statement: limits(within.kelvin) },
    expansionPerK: { value: ppm * 1e-6, statement: limits(within.ppm * 1e-6) },
  };
  return stackModel(stack);
}

/** Blocks that are just as long as stated. */
const exactBlocks = (deviationsUm: readonly number[]): readonly GaugeBlock[] =>
  lengthsOf(deviationsUm.length).map((nominalMm, i) => ({
    id: `block ${i + 1}`,
    nominalMm,
    deviationUm: deviationsUm[i] ?? 0,
    statement: limits(0),
  }));

/** The ends of both sides beyond their nominal length, in micrometres: with all that there is, and as they would be at 20 degrees. */
export function endsOf(of: Comparison) {
  const end = (deviationsUm: readonly number[], celsius: number, ppm: number): number =>
    estimateOf(sideModel({ blocks: exactBlocks(deviationsUm), celsius, ppm, within: NOTHING }));
  const stack = of.deviationsUm.map((deviation) => deviation + of.offUm);
  const single = [of.singleUm];
  const pair = (deviationsUm: readonly number[], celsius: number, ppm: number) => ({
    end: end(deviationsUm, celsius, ppm),
    cold: end(deviationsUm, REFERENCE_CELSIUS, ppm),
  });
  return { stack: pair(stack, of.stackC, of.stackPpm), single: pair(single, of.singleC, of.singlePpm) };
}

/** Stack less single block, as it is there, in micrometres. */
export function differenceUm(of: Comparison): number {
  const { stack, single } = endsOf(of);
  return stack.end - single.end;
}

/** What is stated of a block, knowing what is known. */
function statedOf(nominalMm: number, known: Known): Statement {
  if (known === 'nominal') return limits(0);
  if (known === 'grade') return limits(gradeLimitUm(nominalMm));
  return { form: 'expanded', expanded: CERTIFICATE_UM, coverageFactor: 2 };
}

/** The cause that the certificates of one set share. */
const SET = 'the instrument of the set';

function claimedBlocks(deviationsUm: readonly number[], known: Known): readonly GaugeBlock[] {
  const isCertified = known === 'own' || known === 'shared';
  return exactBlocks(deviationsUm).map((block) => ({
    ...block,
    deviationUm: isCertified ? block.deviationUm : 0,
    statement: statedOf(block.nominalMm, known),
    ...(known === 'shared' && { cause: SET }),
  }));
}

/** The sum by which somebody says beforehand what the comparison will show, in micrometres. */
export function claimModel(of: Comparison): SumModel {
  const warm = of.counted === 'each';
  const within = warm ? { kelvin: THERMOMETER_K, ppm: EXPANSION_PPM } : NOTHING;
  const celsius = (there: number): number => (warm ? there : REFERENCE_CELSIUS);
  const single = of.known === 'shared' ? 'own' : of.known;
  const a = sideModel({
    blocks: claimedBlocks(of.deviationsUm, of.known),
    filmUm: limits(FILM_UM),
    celsius: celsius(of.stackC),
    ppm: of.stackPpm,
    within,
  });
  const b = sideModel({
    blocks: claimedBlocks([of.singleUm], single),
    celsius: celsius(of.singleC),
    ppm: of.singlePpm,
    within,
  });
  return differenceModel({ a, b });
}

/** Worst case and propagation of that sum. */
export const claimOf = (of: Comparison): BandResult => bandOf(claimModel(of));

/** Whether what is there lies within what was claimed. */
export function isCovered(of: Comparison): boolean {
  const { estimate, propagation } = claimOf(of);
  return Math.abs(differenceUm(of) - estimate) <= propagation.expanded + 1e-12;
}
