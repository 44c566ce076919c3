import { type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { claimOf, misfitMm, PLAY_MM, type TwoRules } from '../../sheet/two-rules.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type RulesFields, type RulesState, rulesOf, rulesSpec } from './spec.ts';

/** Lengths at which the figure is computed: its lines are straight or nearly so between them. */
const STEPS = 20;

function lengths(): readonly number[] {
  const { max } = rulesSpec.fields.length;
  return Array.from({ length: STEPS + 1 }, (_, index) => (max * index) / STEPS);
}

/** The claim at every length, from end to end. */
const claims = (rules: TwoRules) =>
  lengths().map((lengthMm) => {
    const { expanded } = claimOf({ ...rules, lengthMm }).propagation;
    return { x: lengthMm, lower: -expanded, upper: expanded };
  });

const reachOf = (rules: TwoRules): number => {
  const { max: lengthMm } = rulesSpec.fields.length;
  const longest = { ...rules, lengthMm };
  return Math.max(PLAY_MM, Math.abs(misfitMm(longest)), claimOf(longest).propagation.expanded);
};

const differs = (a: RulesState, b: RulesState): boolean => a.step !== b.step || a.known !== b.known;

/** The figure's data of a state; the axis stays while a handle is held. */
export function figureOf({ values, before, held }: FieldsState<RulesFields>): Omit<LineBandProps, 'frame'> {
  const rules = rulesOf(values);
  const ghost = before && differs(values, before) ? before : undefined;
  const states = [held ?? values, ...(ghost ? [ghost] : [])];
  return {
    domain: { lower: 0, upper: rulesSpec.fields.length.max },
    span: spanFor(Math.max(...states.map((state) => reachOf(rulesOf(state))))),
    line: lengths().map((lengthMm) => ({ x: lengthMm, y: misfitMm({ ...rules, lengthMm }) })),
    band: claims(rules),
    ghost: ghost && claims(rulesOf(ghost)),
    limit: PLAY_MM,
    at: { x: rules.lengthMm, y: misfitMm(rules) },
  };
}
