import { type BandResult, componentOf, type Input } from '#compute';
import { bandOf } from './band.ts';
import { limits } from './link.ts';

/** What the builders know of their rules. */
export const KNOWN = ['nothing', 'promise', 'compared'] as const;
export type Known = (typeof KNOWN)[number];

/** Two rules from two shops: one measures the posts of a frame, the other the holes that they go into. All of it is invented. */
export interface TwoRules {
  /** Length as both rules read it, in millimetres. */
  readonly lengthMm: number;
  /** How much too much a rule reads, in percent of what it reads: what it calls a length is that much shorter. */
  readonly firstPercent: number;
  readonly secondPercent: number;
  /** Distance of the finest marks, in millimetres. */
  readonly stepMm: number;
  readonly known: Known;
}

/** What the joints give way, to either side, in millimetres. */
export const PLAY_MM = 1;
/** What the makers promise of every rule of the kind: no more than this off, in percent of the length. */
export const PROMISE_PERCENT = 0.08;
/** Expanded uncertainty (k = 2) of each rule's correction after a comparison with a better one, in percent of the length. */
const COMPARED_PERCENT = 0.01;

/** The club's frame as it was built. */
export const clubFrame = (): TwoRules => ({
  lengthMm: 600,
  firstPercent: 0.04,
  secondPercent: -0.06,
  stepMm: 1,
  known: 'nothing',
});

/** Between the holes less the posts, in millimetres: an error of each rule shows only in what two of them build. */
export const differenceMm = ({ lengthMm, firstPercent, secondPercent }: TwoRules): number =>
  (lengthMm * (firstPercent - secondPercent)) / 100;

/** The misfit that is there: none where both rules' corrections are known and used. */
export const misfitMm = (rules: TwoRules): number => (rules.known === 'compared' ? 0 : differenceMm(rules));

/** A misfit on the edge of the play still fits: what differs from it by less than this, in millimetres, is rounding. */
const ROUNDING_MM = 1e-9;

/** Whether the joints give way by as much as the misfit that is there. */
export const isFitting = (rules: TwoRules): boolean => Math.abs(misfitMm(rules)) <= PLAY_MM + ROUNDING_MM;

/** The longest that still fits, in millimetres; infinite where the two rules agree. */
export const longestThatFitsMm = (rules: TwoRules): number =>
  (100 * PLAY_MM) / Math.abs(rules.secondPercent - rules.firstPercent);

/** What the builders may say of the misfit, knowing what they know: in millimetres, about none. */
export function claimOf(rules: TwoRules): BandResult {
  const inputs = [...['first', 'second'].flatMap((rule) => ruleInputs(rule, rules)), ...readings(rules)];
  const sensitivities = inputs.map(({ id }) => (id.startsWith('first') ? -1 : 1));
  return bandOf({ kind: 'sum', constant: 0, inputs, sensitivities });
}

function ruleInputs(rule: string, { lengthMm, known }: TwoRules): Input[] {
  if (known === 'nothing') return [];
  const statement =
    known === 'promise'
      ? limits((lengthMm * PROMISE_PERCENT) / 100)
      : ({ form: 'expanded', expanded: (lengthMm * COMPARED_PERCENT) / 100, coverageFactor: 2 } as const);
  return [componentOf({ id: `${rule} rule`, statement, unit: 'own' })];
}

/** Each length is read to the nearest mark. */
const readings = ({ stepMm }: TwoRules): Input[] =>
  ['first', 'second'].map((rule) =>
    componentOf({
      id: `${rule} reading`,
      statement: { form: 'displayStep', step: stepMm },
      unit: 'own',
    }),
  );
