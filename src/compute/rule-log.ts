import type { DecidingInterval } from './deciding.ts';
import { rangeError } from './quantity.ts';
import { checkedRule, type Rule } from './specification.ts';

/** What was agreed: the rule, and the interval that decides. */
export interface Agreed {
  readonly rule: Rule;
  readonly decidingInterval: DecidingInterval;
}

/** A change after the first reading, for everybody to see. Times are texts handed in; nothing here reads a clock. */
export interface RuleChange {
  readonly at: string;
  readonly reason: string;
  readonly from: Agreed;
  readonly to: Agreed;
}

/** The rule in force, since when it is locked, and what was changed afterwards. */
export interface RuleLog extends Agreed {
  readonly lockedAt: string | undefined;
  readonly changes: readonly RuleChange[];
}

const said = (name: string, text: string): string => {
  if (text.trim() === '') throw rangeError({ where: 'ruleLog', wish: `${name} must be said`, got: text });
  return text;
};

/** A rule agreed on and still open. @throws RangeError for a rule out of range. */
export function openRule({ rule, decidingInterval }: Agreed): RuleLog {
  return { rule: checkedRule('openRule', rule), decidingInterval, lockedAt: undefined, changes: [] };
}

/** Locks the rule, at the first reading; a rule already locked keeps its time. @throws RangeError for an empty time. */
export function lockRule(log: RuleLog, at: string): RuleLog {
  return log.lockedAt === undefined ? { ...log, lockedAt: said('at', at) } : log;
}

/**
 * Another rule: freely before the lock, afterwards with time and reason kept beside the result.
 * @throws RangeError for a rule out of range, or once locked an empty time or reason.
 * Source: JCGM 106, 8.1 (the decision rule is agreed on before the measurement).
 */
export function changeRule(
  log: RuleLog,
  { rule, decidingInterval, at, reason }: Agreed & { at: string; reason: string },
): RuleLog {
  const to = { rule: checkedRule('changeRule', rule), decidingInterval };
  if (log.lockedAt === undefined) return { ...log, ...to };
  const from = { rule: log.rule, decidingInterval: log.decidingInterval };
  const change: RuleChange = { at: said('at', at), reason: said('reason', reason), from, to };
  return { ...log, ...to, changes: [...log.changes, change] };
}
