import { describe, expect, it } from 'vitest';
import { demonstrationEntries } from '../../../src/bench/entries/fresh.ts';
import { isFuture } from '../../../src/bench/keep/future.ts';
import {
  afterChange,
  afterKeeping,
  isBlocked,
  isDirty,
  nameOf,
  placeKept,
  placeOf,
  stateOf,
} from '../../../src/bench/keep/place.ts';
import { strings } from '../../../src/bench/strings.ts';

const begun = demonstrationEntries();
const typed = { ...begun, title: 'typed' };
const head = { id: 'a', name: 'n', created: 'c', changed: 'd', revision: 4 };
const fresh = placeOf('a', begun);
const kept = placeKept({ ...head, value: begun });
const changed = { ...kept, latest: typed };

describe('a sheet on the page', () => {
  it('is to be kept once it differs from what was opened, or where the reader wants it', () => {
    expect(isDirty(fresh)).toBe(false);
    expect(isDirty({ ...fresh, latest: typed })).toBe(true);
    expect(isDirty({ ...fresh, wanted: true })).toBe(true);
    expect(isDirty(kept)).toBe(false);
    expect(isDirty(changed)).toBe(true);
    expect(isDirty({ ...kept, wanted: true }), 'it is kept already').toBe(false);
  });

  it('is kept as it stood when keeping began: what was typed meanwhile still waits', () => {
    const later = { ...typed, title: 'typed on' };
    const after = afterKeeping({ ...changed, latest: later }, typed, {
      ok: true,
      value: { ...head, revision: 5 },
    });
    expect(after).toMatchObject({ saved: typed, head: { revision: 5 }, problem: undefined });
    expect(isDirty(after)).toBe(true);
    expect(stateOf(after)).toEqual({ kind: 'waiting' });
    expect(stateOf({ ...after, latest: typed })).toEqual({ kind: 'kept', head: { ...head, revision: 5 } });
  });

  it.each(['refused', 'full'] as const)(
    'that could not be kept (%s) is tried again with the next change',
    (problem) => {
      const after = afterKeeping(changed, typed, { ok: false, problem });
      expect(stateOf(after)).toEqual({ kind: 'failed', problem });
      expect(isBlocked(after)).toBe(false);
      expect(isDirty(after)).toBe(true);
    },
  );

  it.each(['changed', 'missing', 'newer'] as const)(
    'that somebody else touched (%s) waits for a choice',
    (problem) => {
      expect(stateOf({ ...changed, problem })).toEqual({ kind: 'elsewhere', problem, mine: true });
      expect(stateOf({ ...kept, problem })).toEqual({ kind: 'elsewhere', problem, mine: false });
      expect(isBlocked({ ...kept, problem })).toBe(true);
    },
  );

  it('hears of a later revision and of its removal, and not of what it knows', () => {
    expect(afterChange(kept, 5).problem).toBe('changed');
    expect(afterChange(kept, 4)).toBe(kept);
    expect(afterChange(kept, 3)).toBe(kept);
    expect(afterChange(kept, undefined).problem).toBe('missing');
    expect(afterChange(afterChange(kept, undefined), 4), 'brought back as it was').toEqual(kept);
    expect(afterChange(fresh, 9), 'that is not kept is nobody else’s').toBe(fresh);
  });

  it('is unchanged, and told so, as long as it is not kept', () => {
    expect(stateOf(fresh)).toEqual({ kind: 'unchanged' });
    expect(stateOf(kept)).toEqual({ kind: 'kept', head });
  });
});

describe('the name of a sheet', () => {
  it('is its title without what disturbs the text around it', () => {
    expect(nameOf({ ...begun, title: '  Fox \u202e 3\n' })).toBe('Fox  3');
    expect(nameOf({ ...begun, title: '<b>Fox</b>' })).toBe('<b>Fox</b>');
  });

  it('is said to be missing where it is', () => {
    for (const title of ['', '  ', '\u200b']) expect(nameOf({ ...begun, title })).toBe(strings.untitled);
  });
});

describe('a time that was noted', () => {
  const now = Date.parse('2031-05-04T10:00:00Z');
  it.each([
    ['2031-05-04T09:59:59Z', false],
    ['2031-05-04T10:04:59Z', false],
    ['2031-05-04T10:05:01Z', true],
    ['2093-01-01T00:00:00Z', true],
    ['1970-01-01T00:00:00Z', false],
    ['', false],
    ['no time', false],
  ])('%s is still to come: %s', (time, is) => expect(isFuture(time, now)).toBe(is));
});
