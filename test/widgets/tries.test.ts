import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { type Tried, triedOf } from '../../src/sheet/tried.ts';
import { clubTry, TRIALS, TRIED, type TryOrder } from '../../src/sheet/tries.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { axesOf, figureOf } from '../../src/widgets/tries/figure.ts';
import { toldOf } from '../../src/widgets/tries/RunLine.tsx';
import { type RunAction, type RunState, reduceRun } from '../../src/widgets/tries/run-state.ts';
import { OWN_FIELDS, orderOf, type TriesState, triesSpec } from '../../src/widgets/tries/spec.ts';
import { strings } from '../../src/widgets/tries/strings.ts';
import { answersOf, lanesOf, summarise, validationOf } from '../../src/widgets/tries/words.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = triesSpec;
const prepared: TriesState = defaultState(fields);
const nb = '\u00a0';
const runs = new Map<string, Tried>();
function runOf(change: Partial<TryOrder> = {}): Tried {
  const order = { ...clubTry(), ...change };
  const key = JSON.stringify(order);
  const run = runs.get(key) ?? triedOf(order);
  runs.set(key, run);
  return run;
}
const verdict = (change: Partial<TryOrder>, kind: 'symmetric' | 'shortest' = 'symmetric') =>
  answersOf(runOf(change), kind)[3]?.figure;

describe('the address of the trials', () => {
  it('has a specification free of faults, units as its kinds say, and words for every code', () => {
    expect(specFaults(triesSpec)).toEqual([]);
    for (const [name, unit] of Object.entries(strings.settings.units))
      expect(kindOf(fields[name as keyof typeof strings.settings.units].kind).base, name).toBe(unit);
    expect(Object.keys(strings.settings.choices.model)).toEqual([...TRIED]);
    expect(Object.keys(strings.settings.choices.trials).toSorted()).toEqual([...TRIALS].toSorted());
    for (const name of ['interval', 'coverage', 'order'] as const)
      expect(Object.keys(strings.settings.choices[name])).toEqual(Object.keys(fields[name].choices));
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(triesSpec, encode(triesSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with volts and a load, and orders only what belongs to what is tried', () => {
    expect(orderOf(prepared)).toEqual(clubTry());
    fc.assert(
      fc.property(anyState(fields), (state) => {
        const order = orderOf(state);
        for (const [model, names] of Object.entries(OWN_FIELDS))
          for (const name of names)
            expect(order[name as keyof TryOrder]).toBe(model === state.model ? state[name] : prepared[name]);
        expect(order).toMatchObject({ trials: state.trials, seed: state.seed, coverage: state.coverage });
        expect(order).not.toHaveProperty('interval');
      }),
    );
  });
});

describe('the answers', () => {
  it('give mean and interval of the trials beside propagation, and whether that will do', () => {
    const [mean, own, propagated, will] = answersOf(runOf(), 'symmetric');
    expect(mean?.figure).toMatch(/^48[01]\.\d\u00a0mW$/);
    expect(mean?.words).toContain('Watts from volts across a load: mean of 100\u00a0000 trials');
    expect(own?.figure).toMatch(/^44[01]\.\d to 523\.\d\u00a0mW$/);
    expect(own?.words).toContain(`the middle 95${nb}% of the trials`);
    expect(propagated?.figure).toBe(`437.8 to 522.6${nb}mW`);
    expect(propagated?.words).toContain('first order');
    expect(will?.figure).toBe('Propagation will do');
    expect(will?.words).toContain(`5.0${nb}mW`);
  });

  it('say where propagation will not do, as print does for 9.3 and 9.4', () => {
    expect(verdict({ voltsPercent: 20 })).toBe('Propagation will not do');
    expect(verdict({ model: 'phase' })).toBe('Propagation will not do');
    for (const reflection of [0, 10, 50])
      expect(verdict({ model: 'loss', reflection }, 'shortest'), String(reflection)).toBe(
        'Propagation will not do',
      );
    expect(verdict({ model: 'weight' })).toBe('Propagation will not do');
    expect(verdict({ model: 'weight', order: 'second' })).toBe('Propagation will do');
  });

  it('judge nothing by few trials, and by those that have settled', () => {
    expect(verdict({ trials: '10000' })).toBe('Too few trials to judge');
    expect(validationOf(runOf({ trials: '100' }), 'symmetric')).toBeUndefined();
    expect(verdict({ trials: 'settled' })).toBe('Propagation will do');
    expect(validationOf({ ...runOf(), standardUncertainty: 0 }, 'symmetric')).toBeUndefined();
  });

  it('have the shortest interval where it is asked for', () => {
    const of = runOf({ model: 'loss' });
    expect(answersOf(of, 'shortest')[1]?.words).toContain('the shortest');
    expect(lanesOf(of, 'shortest')[0]?.interval).toBe(of.shortest);
    expect(lanesOf(of, 'shortest')[0]?.number).toMatch(/^0 to 1[45]\d$/);
  });

  it('speak in words without signs, with finite numbers whatever is tried', () => {
    for (const model of TRIED)
      for (const trials of ['100', '1000'] as const)
        for (const kind of ['symmetric', 'shortest'] as const) {
          const of = runOf({ model, trials });
          const said = [summarise(of, kind), ...answersOf(of, kind).flatMap(Object.values)].join(' ');
          expect(said).not.toMatch(/NaN|Infinity|undefined/);
          expect(summarise(of, kind)).not.toMatch(/[−±]/);
        }
  });
});

describe('the figure', () => {
  it('holds columns, bell and both intervals for everything that is tried', () => {
    for (const model of TRIED) {
      const { domain, curve, compared, lanes } = figureOf(runOf({ model, trials: '1000' }), 'symmetric');
      const places = [...curve, ...compared].map(({ x }) => x);
      const ends = lanes.flatMap(({ interval }) => (interval ? [interval.lower, interval.upper] : []));
      for (const place of [...places, ...ends]) {
        expect(place).toBeGreaterThan(domain.lower);
        expect(place).toBeLessThan(domain.upper);
      }
    }
  });

  it('draws no bell where propagation says that nothing varies', () => {
    expect(figureOf(runOf({ model: 'loss' }), 'symmetric').compared).toEqual([]);
    expect(figureOf(runOf(), 'symmetric').compared.length).toBeGreaterThan(50);
  });

  it('says what its axis gives, in the unit of the answers', () => {
    for (const model of TRIED)
      expect(axesOf({ ...clubTry(), model }).along).toContain(`in ${strings.units[model]}`);
  });
});

const tried = runOf({ trials: '100' });
const far = runOf({ trials: '1000' });
const still: RunState = { kind: 'still', tried };
const action: fc.Arbitrary<RunAction> = fc.constantFrom<RunAction>(
  { kind: 'start' },
  { kind: 'stop' },
  { kind: 'prepared', tried },
  { kind: 'far', tried: far },
  { kind: 'done', tried: far },
  { kind: 'failed', message: 'no' },
);

describe('a run as it is shown', () => {
  it('always has something to show, and a sentence on how it stands', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 12 }), (actions) => {
        const state = actions.reduce(reduceRun, still);
        expect([tried, far]).toContain(state.tried);
        expect(toldOf(state)).toMatch(/\.$|: no$/);
      }),
    );
  });

  it('changes by news only while it runs', () => {
    for (const kind of ['still', 'stopped', 'failed'] as const)
      for (const news of ['far', 'done'] as const) {
        const state: RunState = { kind, tried };
        expect(reduceRun(state, { kind: news, tried: far })).toBe(state);
      }
    const running = reduceRun(still, { kind: 'start' });
    expect(reduceRun(running, { kind: 'far', tried: far })).toEqual({ kind: 'running', tried: far });
    expect(reduceRun(running, { kind: 'done', tried: far })).toEqual({ kind: 'still', tried: far });
    expect(reduceRun(running, { kind: 'stop' })).toEqual({ kind: 'stopped', tried });
  });

  it('tells its number of trials and its seed, and what it has settled to', () => {
    expect(toldOf(still)).toBe('100 trials, random numbers from seed 1.');
    expect(toldOf({ kind: 'running', tried })).toBe('Trying; shown so far: 100 trials.');
    expect(toldOf({ kind: 'stopped', tried })).toBe('Stopped; what is shown are 100 trials.');
    expect(toldOf({ kind: 'failed', tried, message: 'no' })).toBe('The trials could not be made: no');
    const settled = runOf({ trials: 'settled' });
    expect(toldOf({ kind: 'still', tried: settled })).toBe(
      `Settled to 0.5${nb}mW after ${settled.trials / 1000}${nb}000 trials, random numbers from seed 1.`,
    );
    expect(toldOf({ kind: 'still', tried: { ...settled, settled: false } })).toContain('Not settled');
  });
});
