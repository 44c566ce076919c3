import { defaultState } from '../../address/field-spec.ts';
import { distanceInU, judgedBy, riskAtEdge, sortedBy } from '../../sheet/conformity.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { intervalText } from '../../text/interval-text.ts';
import { levelText, numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import { verdictLabel } from '../../text/words.ts';
import { heldOf, type VerdictState, verdictSpec } from '../../widgets/verdict/spec.ts';

const club = defaultState(verdictSpec.fields);
type RuleName = VerdictState['rule'];

/** Numbers of the lesson on verdicts, all from the club's reading of one evening. */
export function verdictValues(): Readonly<Record<string, () => string>> {
  const { reading, expanded } = club;
  return {
    level: () => level(reading),
    band: () => plusMinusText('shown', { halfWidth: expanded, decimals: 2, unit: 'dB' }),
    span: () =>
      intervalText('shown', {
        lower: reading - expanded,
        upper: reading + expanded,
        decimals: 2,
        unit: 'dBm',
      }),
    limit: () => level(club.upper),
    lowerLimit: () => level(club.lower),
    chance: () => chanceAt(club),
    distance: () => numberText('shown', { value: distanceInU(heldOf(club)), decimals: 2 }),
    ...ofEachRule('simple', 'Simple'),
    ...ofEachRule('guardBand', 'Guard'),
    ...ofEachRule('probability', 'Probability'),
    good: () => numberText('shown', { value: 1000 * sorted('simple').conforming, decimals: 0 }),
    needed: () => wide(1.7),
    roomU: () => quantityText('shown', { value: 1.5, decimals: 1, unit: 'dB' }),
    justInside: () => {
      const near: VerdictState = { ...club, rule: 'simple', reading: 28.45 };
      return `${verdictAt(near)}, with a chance of ${share(1 - chanceOf(near))} that it is not`;
    },
    pickedAfter: () =>
      `${level(reading)} is ${verdictAt({ ...club, rule: 'simple' })} by one rule and ${verdictAt(club)} by another; whoever may choose now, chooses the verdict`,
    blamed: () => `by this rule no reading at all would be inside; that takes U = ${wide(1.7)} or less`,
  };
}

const level = (levelDbm: number): string => levelText('shown', { levelDbm, decimals: 2 });
const share = (of: number): string => percentText('shown', { percent: 100 * of, decimals: 0 });
const thousand = (of: number): string => numberText('shown', { value: 1000 * of, decimals: 1 });

const chanceOf = (state: VerdictState): number => judgedBy(heldOf(state)).probabilityOfConformity ?? 0;
const chanceAt = (state: VerdictState): string =>
  percentText('shown', { percent: 100 * chanceOf(state), decimals: 1 });

const verdictAt = (state: VerdictState): string =>
  verdictLabel(judgedBy(heldOf(state)).verdict).replace("'", '\u2019');

function sorted(rule: RuleName) {
  const risks = sortedBy(heldOf({ ...club, rule }));
  if (risks === undefined) throw new RangeError('verdictValues: the spread must be known, got none');
  return risks;
}

/** The uncertainty that a specification asks for, where it is too large for any reading to be inside. */
function wide(expanded: number): string {
  const { neededExpanded } = judgedBy(heldOf({ ...club, expanded, reading: 27 }));
  if (neededExpanded === undefined)
    throw new RangeError('verdictValues: nothing must fit, got an acceptance interval');
  return quantityText('shown', { value: neededExpanded, decimals: 2, unit: 'dB' });
}

/** Edge, risk, verdict and what becomes of a thousand transmitters, by one rule. */
function ofEachRule(rule: RuleName, name: string): Readonly<Record<string, () => string>> {
  const state: VerdictState = { ...club, rule };
  return {
    [`edge${name}`]: () => level(judgedBy(heldOf(state)).acceptance?.upper ?? Number.NaN),
    [`risk${name}`]: () =>
      percentText('shown', { percent: 100 * (riskAtEdge(heldOf(state)) ?? 0), decimals: 1 }),
    [`verdict${name}`]: () => verdictAt(state),
    [`passed${name}`]: () => thousand(sorted(rule).consumer),
    [`wronged${name}`]: () => thousand(sorted(rule).producer),
  };
}
