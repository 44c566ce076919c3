import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demonstrationEntries, freshEntries } from '../../src/bench/entries/fresh.ts';
import { agreedRule, agreedSpecification } from '../../src/bench/state/agreed-text.ts';
import { demonstration } from '../../src/bench/state/demonstration.ts';
import { type BenchAction, type BenchState, reduceBench } from '../../src/bench/state/state.ts';
import { blankPoint, type LoggedChange, type PointEntries } from '../../src/sheet/entries.ts';
import { anyAction } from './any-action.ts';

const FIRST = '2026-05-09T10:00:00Z';
const LATER = '2026-05-09T10:20:00Z';
const on = (state: BenchState, ...actions: readonly BenchAction[]): BenchState =>
  actions.reduce(reduceBench, state);
const editPoint = (change: Partial<Omit<PointEntries, 'id'>>, at: string, id = 'point1'): BenchAction => ({
  type: 'editPoint',
  id,
  path: `${id}.${Object.keys(change)[0] ?? ''}`,
  change,
  at,
});
const chooseRule = (rule: 'simple' | 'guardBand', at: string): BenchAction => ({
  type: 'edit',
  path: 'rule',
  change: { rule },
  at,
});
const undo: BenchAction = { type: 'undo' };
const log = ({ entries }: BenchState) => entries.log;
/** Spaces of every kind as ordinary ones. */
const plain = (changes: readonly LoggedChange[]) =>
  changes.map(({ what, from, to }) => [what, from, to].map((text) => text.replace(/\s/g, ' ')));

const read = on(demonstration(), editPoint({ readings: '7.1' }, FIRST));

describe('the first reading', () => {
  it('locks rule and specification at its time, and a later one changes nothing about that', () => {
    expect(log(read)).toEqual({ lockedAt: FIRST, read: ['point1'], changes: [] });
    expect(log(on(read, editPoint({ readings: '7.2' }, LATER)))).toEqual(log(read));
  });

  it('does not lock as long as it cannot be read, is not told when, or is no reading at all', () => {
    const fresh = on(demonstration(), { type: 'fresh', method: 'padsIntoMeter' });
    expect(log(on(fresh, editPoint({ readings: 'x' }, FIRST))).lockedAt).toBe('');
    expect(log(on(fresh, editPoint({ readings: '' }, FIRST))).lockedAt).toBe('');
    expect(log(on(fresh, editPoint({ nominal: '27' }, FIRST))).lockedAt).toBe('');
    expect(log(on(fresh, editPoint({ readings: '7' }, ''))).lockedAt).toBe('');
    expect(
      log(on(fresh, editPoint({ readings: 'x' }, FIRST), editPoint({ readings: '7' }, LATER))),
    ).toMatchObject({
      lockedAt: LATER,
    });
  });

  it('is any column of the method’s, also where several were pasted at once', () => {
    const fresh = on(demonstration(), { type: 'fresh', method: 'dcSubstitution' });
    expect(log(on(fresh, editPoint({ volts: '5' }, FIRST))).lockedAt).toBe(FIRST);
    const pasted = '9.5\t9.4\t5\t0.1\n9.5\t9.4\t5\t0.1';
    expect(log(on(fresh, editPoint({ readings: pasted }, FIRST))).lockedAt).toBe(FIRST);
  });

  it('unlocks again with undo', () => {
    expect(log(on(read, undo))).toEqual(demonstrationEntries().log);
  });

  it('may come after any number of changes of what is agreed, none of which is logged', () => {
    const state = on(
      demonstration(),
      editPoint({ nominal: '24' }, FIRST),
      chooseRule('simple', FIRST),
      editPoint({ readings: '7' }, LATER),
    );
    expect(log(state)).toMatchObject({ lockedAt: LATER, changes: [] });
  });
});

describe('a change after the first reading', () => {
  it('of the rule is logged with its time, what it was and what it is', () => {
    const { changes } = log(on(read, chooseRule('simple', LATER)));
    expect(changes).toMatchObject([{ at: LATER, what: 'rule', reason: '' }]);
    expect(plain(changes)).toEqual([['rule', 'guard band of 1 × U', 'simple acceptance']]);
  });

  it('of a specification is logged, typing in one field as one change from what was agreed', () => {
    const state = on(
      read,
      editPoint({ tolerance: '1' }, LATER),
      editPoint({ tolerance: '' }, LATER),
      editPoint({ tolerance: '2' }, LATER),
      editPoint({ tolerance: '2.5' }, LATER),
    );
    expect(plain(log(state).changes)).toEqual([['point1', '27 dBm ± 1.5 dB', '27 dBm ± 2.5 dB']]);
    const next = on(state, editPoint({ nominal: '26' }, LATER));
    expect(plain(log(next).changes)[1]).toEqual(['point1', '27 dBm ± 2.5 dB', '26 dBm ± 2.5 dB']);
  });

  it('that comes back to what was agreed while still being typed is none', () => {
    const state = on(read, editPoint({ tolerance: '1.' }, LATER), editPoint({ tolerance: '1.5' }, LATER));
    expect(log(state)).toEqual(log(read));
  });

  it('that says the same in another spelling is none, and neither is one of anything else', () => {
    expect(log(on(read, editPoint({ nominal: '27,0 dBm' }, LATER)))).toEqual(log(read));
    expect(log(on(read, editPoint({ label: '80 m' }, LATER)))).toEqual(log(read));
    expect(log(on(read, editPoint({ highest: '40' }, LATER)))).toEqual(log(read)); // not used by this form
    expect(log(on(read, { type: 'edit', path: 'required', change: { required: '99' }, at: LATER }))).toEqual(
      log(read),
    );
  });

  it('is taken back with undo, and given its reason', () => {
    const changed = on(read, chooseRule('simple', LATER));
    expect(log(on(changed, undo))).toEqual(log(read));
    const reasoned = on(
      changed,
      { type: 'giveReason', index: 0, reason: 'the club' },
      { type: 'giveReason', index: 0, reason: 'the club decided so' },
    );
    expect(log(reasoned).changes[0]?.reason).toBe('the club decided so');
    expect(log(on(reasoned, undo))).toEqual(log(changed));
    expect(on(reasoned, { type: 'giveReason', index: 7, reason: 'x' })).toBe(reasoned);
  });

  it('of a point that nothing was read at yet is none, of one that was read it is', () => {
    const two = on(read, { type: 'addPoint' }, editPoint({ nominal: '24' }, LATER, 'point2'));
    expect(log(two).changes).toEqual([]);
    const both = on(
      two,
      editPoint({ readings: '4' }, LATER, 'point2'),
      editPoint({ nominal: '23' }, LATER, 'point2'),
    );
    expect(log(both).read).toEqual(['point1', 'point2']);
    expect(plain(log(both).changes)).toEqual([['point2', '24 dBm ± 1.5 dB', '23 dBm ± 1.5 dB']]);
  });

  it('of a point that came in place of a removed one is not taken for a change of that one', () => {
    const state = on(
      read,
      { type: 'addPoint' },
      editPoint({ readings: '4' }, LATER, 'point2'),
      { type: 'removePoint', id: 'point2' },
      { type: 'addPoint' },
    );
    expect(state.point).not.toBe('point2');
    expect(log(on(state, editPoint({ nominal: '20' }, LATER, state.point))).changes).toEqual([]);
  });

  it('is not hidden by taking the readings out first', () => {
    const state = on(
      read,
      editPoint({ readings: '' }, LATER),
      editPoint({ nominal: '24' }, LATER),
      editPoint({ readings: '7.1' }, LATER),
    );
    expect(plain(log(state).changes)).toEqual([['point1', '27 dBm ± 1.5 dB', '24 dBm ± 1.5 dB']]);
  });

  it('from no specification to a first one after the reading says that nothing was agreed', () => {
    const late = on(
      demonstration(),
      { type: 'fresh', method: 'padsIntoMeter' },
      editPoint({ readings: '7' }, FIRST),
      editPoint({ nominal: '27' }, LATER),
      editPoint({ tolerance: '1' }, LATER),
      editPoint({ tolerance: '1.5' }, LATER),
    );
    expect(plain(log(late).changes)).toEqual([['point1', 'nothing agreed', '27 dBm ± 1.5 dB']]);
  });
});

it('is a new one with another sheet', () => {
  expect(log(on(read, { type: 'fresh', method: 'inLine' }))).toEqual(freshEntries('inLine').log);
  expect(log(on(read, { type: 'demonstration' })).lockedAt).toBe('');
});

it('never loses or rewrites a change while a sheet goes on, but for the one that is being typed', () => {
  const goesOn = (action: BenchAction): boolean =>
    !['undo', 'redo', 'open', 'demonstration', 'fresh', 'cancel'].includes(action.type);
  fc.assert(
    fc.property(fc.array(anyAction.filter(goesOn), { maxLength: 25 }), (list) => {
      let state = read;
      for (const action of list) {
        const next = reduceBench(state, action);
        const kept = log(state).changes.slice(0, -1);
        expect(
          log(next)
            .changes.slice(0, kept.length)
            .map(({ from, to, at }) => [from, to, at]),
        ).toEqual(kept.map(({ from, to, at }) => [from, to, at]));
        expect(log(next).lockedAt).toBe(FIRST);
        state = next;
      }
    }),
  );
});

it('says every form of specification and rule in words', () => {
  const point: PointEntries = {
    ...blankPoint('p'),
    nominal: '500 mW',
    tolerance: '1,5',
    above: '+1',
    below: '-2 dB',
    lowest: '25',
    highest: '28.5 dBm',
  };
  const say = (specification: PointEntries['specification']) =>
    agreedSpecification({ ...point, specification }).replace(/\s/g, ' ');
  expect(say('around')).toBe('26.9897 dBm ± 1.5 dB');
  expect(say('uneven')).toBe('26.9897 dBm +1 dB −2 dB');
  expect(say('between')).toBe('25 dBm to 28.5 dBm');
  expect(say('atMost')).toBe('at most 28.5 dBm');
  expect(say('atLeast')).toBe('at least 25 dBm');
  expect(say('licence')).toBe('maximum of the licence 28.5 dBm');
  expect(agreedSpecification({ ...point, nominal: 'x' }).replace(/\s/g, ' ')).toBe('x ± 1.5 dB');
  const entries = demonstrationEntries();
  expect(agreedRule({ ...entries, rule: 'probability' }).replace(/\s/g, ' ')).toBe(
    'conformity at least 95 % probable',
  );
  expect(agreedRule({ ...entries, rule: 'guardBand', multiplier: '0,5' })).toBe('guard band of 0.5 × U');
});
