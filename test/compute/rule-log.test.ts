import { describe, expect, test } from 'vitest';
import { changeRule, lockRule, openRule } from '../../src/compute/rule-log.ts';
import type { Rule } from '../../src/compute/specification.ts';

const simple: Rule = { kind: 'simple' };
const guard: Rule = { kind: 'guardBand', multiplier: 1 };
const open = () => openRule({ rule: guard, decidingInterval: 'whole' });
const later = {
  rule: simple,
  decidingInterval: 'propagation',
  at: '2026-05-02',
  reason: 'the club agreed',
} as const;

describe('the rule and its lock', () => {
  test('before the first reading it changes freely and leaves no trace', () => {
    const changed = changeRule(open(), { ...later, reason: '' });
    expect(changed).toEqual({
      rule: simple,
      decidingInterval: 'propagation',
      lockedAt: undefined,
      changes: [],
    });
  });

  test('after it every change is kept, oldest first, with what it was', () => {
    const locked = lockRule(open(), '2026-05-01');
    const once = changeRule(locked, later);
    expect(once.rule).toEqual(simple);
    expect(once.changes).toEqual([
      {
        at: '2026-05-02',
        reason: 'the club agreed',
        from: { rule: guard, decidingInterval: 'whole' },
        to: { rule: simple, decidingInterval: 'propagation' },
      },
    ]);
    const twice = changeRule(once, {
      rule: guard,
      decidingInterval: 'whole',
      at: '2026-05-03',
      reason: 'and back',
    });
    expect(twice.changes.map(({ at }) => at)).toEqual(['2026-05-02', '2026-05-03']);
    expect(twice.lockedAt).toBe('2026-05-01');
    expect(locked.changes).toEqual([]);
  });

  test('locking twice keeps the first time', () => {
    const locked = lockRule(open(), '2026-05-01');
    expect(lockRule(locked, '2026-06-01')).toBe(locked);
  });

  test('a locked rule changes only with time and reason', () => {
    const locked = lockRule(open(), '2026-05-01');
    expect(() => changeRule(locked, { ...later, reason: ' ' })).toThrow(
      'ruleLog: reason must be said, got " "',
    );
    expect(() => changeRule(locked, { ...later, at: '' })).toThrow('ruleLog: at must be said, got ""');
    expect(() => lockRule(open(), '')).toThrow('ruleLog: at must be said');
  });

  test('a rule out of range is refused from the start', () => {
    const bad: Rule = { kind: 'guardBand', multiplier: -1 };
    expect(() => openRule({ rule: bad, decidingInterval: 'whole' })).toThrow(
      'openRule: multiplier must be > 0, got -1',
    );
    expect(() => changeRule(open(), { ...later, rule: bad })).toThrow(
      'changeRule: multiplier must be > 0, got -1',
    );
  });
});
