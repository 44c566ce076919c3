import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { blankStrings } from '../../src/bench/blank-strings.ts';
import { demonstrationEntries, freshEntries } from '../../src/bench/entries/fresh.ts';
import { remembered } from '../../src/bench/results/remembered.ts';
import { demonstration } from '../../src/bench/state/demonstration.ts';
import { isOwn } from '../../src/bench/state/own.ts';
import { type BenchAction, type BenchState, reduceBench } from '../../src/bench/state/state.ts';
import { Parts } from '../../src/bench/views/Parts.tsx';
import { ResultSection } from '../../src/bench/views/ResultSection.tsx';
import { RunningWords } from '../../src/bench/views/RunningWords.tsx';
import { measurandText } from '../../src/bench/words/measured-words.ts';
import type { PointEntries } from '../../src/sheet/entries.ts';

const on = (state: BenchState, ...actions: readonly BenchAction[]): BenchState =>
  actions.reduce(reduceBench, state);
const bench = (...actions: readonly BenchAction[]): BenchState => on(demonstration(), ...actions);
const type = (change: Partial<Omit<PointEntries, 'id'>>): BenchAction => ({
  type: 'editPoint',
  id: 'point1',
  path: `point1.${Object.keys(change)[0] ?? ''}`,
  change,
});
const fresh: BenchAction = { type: 'fresh', method: 'padsIntoMeter' };
const undo: BenchAction = { type: 'undo' };
const redo: BenchAction = { type: 'redo' };
const filled = (state: BenchState): BenchState =>
  on(state, type({ nominal: '200 mW' }), type({ tolerance: '1' }), type({ readings: '-7.4' }));

describe('a sheet that was never usable', () => {
  it('has no measurement of its own, and no ghost of another one, until all of it can be used', () => {
    const state = bench(type({ readings: '8' }), fresh);
    expect(isOwn(state)).toBe(false);
    expect(state.before).toBeUndefined();
    const done = filled(state);
    expect(isOwn(done)).toBe(true);
    expect(done.before).toBeUndefined();
    expect(done.measurement.points[0]?.columns.readings).toEqual([-7.4]);
  });

  it('keeps its own last usable measurement from then on', () => {
    const state = on(filled(bench(fresh)), type({ tolerance: 'much' }));
    expect(state.problems).toHaveLength(1);
    expect(isOwn(state)).toBe(true);
  });

  it('is none any more where undo brings the other sheet back, and again one after redo', () => {
    expect(isOwn(bench(fresh, undo))).toBe(true);
    expect(isOwn(bench(fresh, undo, redo))).toBe(false);
    const back = on(filled(bench(fresh)), undo, undo, undo, undo);
    expect(back.entries).toEqual(demonstrationEntries());
    expect(isOwn(back)).toBe(true);
    expect(back.before).toBeUndefined();
  });

  it('opened from elsewhere has none either, and one that can be used has', () => {
    const open = (entries: typeof blank): BenchState => bench({ type: 'open', entries, problems: [] });
    const blank = freshEntries('oscilloscope');
    expect(isOwn(open(blank))).toBe(false);
    expect(isOwn(open(demonstrationEntries()))).toBe(true);
    expect(isOwn(bench(fresh, { type: 'demonstration' }))).toBe(true);
  });
});

/** Result, line and the parts below the form, as the page draws them. */
function markupOf(state: BenchState): string {
  const { entries, problems, measurement, point } = state;
  const send = () => undefined;
  const shown = remembered().of(measurement, point);
  const parts = { entries, problems, send, measurement, shown, own: isOwn(state) };
  const results = { shown, opening: shown, all: [shown], settled: true, chainAt: () => undefined };
  return render(
    <>
      <ResultSection state={state} results={results} mayWait={false} send={send} />
      <RunningWords result={shown} own={parts.own} stale={problems.length > 0} />
      <Parts {...parts} standing={() => parts} version="1.2.3" all={[shown]} />
    </>,
  );
}

describe('what is shown of a sheet', () => {
  it('that was never usable is what it still needs: no figure, verdict, record or file of another sheet', () => {
    const markup = markupOf(bench(fresh));
    expect(markup).toContain(blankStrings.needed(3));
    expect(markup).toContain(blankStrings.short);
    expect(markup).toContain(blankStrings.untitled);
    expect(markup).not.toMatch(/27\.10|Inside the specification|hidden transmitter|id="copy"|id="budget"/);
    // a file may be opened all the same
    expect(markup).toContain('id="files"');
  });

  it('that stands on what its method brought along is told how many links that are', () => {
    const done = filled(bench(fresh));
    expect(markupOf(done)).toContain(blankStrings.assumed(5));
    expect(markupOf(done)).toMatch(/Specified: 22\.01 to 24\.01\sdBm/);
    const off: BenchAction = { type: 'editLink', id: 'none', path: 'none.off', change: { off: true } };
    const touched = done.entries.links.map(
      ({ id, amount }): BenchAction => ({ type: 'editLink', id, path: `${id}.amount`, change: { amount } }),
    );
    expect(markupOf(on(done, off, ...touched.slice(1)))).toContain(blankStrings.assumed(1));
    expect(markupOf(on(done, ...touched))).not.toContain('as the method brought');
    expect(markupOf(demonstration())).not.toContain('as the method brought');
  });
});

describe('what was measured', () => {
  const measurand = { power: 'carrier', plane: '', conditions: 'key down' } as const;

  it('is told with the frequency that was typed, once', () => {
    expect(measurandText('ascii', { measurand }, 3.5e6)).toBe('Carrier power; key down; 3.5 MHz.');
    expect(measurandText('ascii', { measurand })).toBe('Carrier power; key down.');
    const conditions = '3.58 MHz, key down';
    expect(measurandText('shown', { measurand: { ...measurand, conditions } }, 3.58e6)).toBe(
      'Carrier power; 3.58 MHz, key down.',
    );
    expect(markupOf(on(filled(bench(fresh)), type({ frequency: '3.5' })))).toMatch(/; 3\.5\sMHz\./);
  });
});

describe('a loss that is no number', () => {
  it('is told that a loss is expected', () => {
    const state = bench({ type: 'editLink', id: 'pad', path: 'pad.loss', change: { loss: 'ten' } });
    expect(state.problems[0]?.problem).toMatch(/^“ten” is not a number: a loss is expected, in dB/);
  });
});
