import { describe, expect, it } from 'vitest';
import { amountOf, withLinkAmount } from '../../src/sheet/amount.ts';
import { bandChainOf } from '../../src/sheet/chain.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { bandRows } from '../../src/widgets/parts/band-rows.ts';
import { readBand } from '../../src/widgets/reading-band/band-address.ts';
import { addRung } from '../../src/widgets/reading-band/own-rungs.ts';
import {
  type BandAction,
  type BandState,
  initialState,
  reduceBand,
} from '../../src/widgets/reading-band/state.ts';
import { levelAnswer } from '../../src/widgets/reading-band/words.ts';

const shown = { showLimits: true, showCurve: false };

/** What an address does to the club's chain. */
function opening(query: string): BandAction {
  const { opened, problems } = readBand({ sheet: clubSheet(), ...shown }, query, undefined);
  if (opened === undefined || problems.length > 0) throw new Error(`test: wish an address, got ${query}`);
  return { type: 'open', onto: opened };
}

const start = () => initialState({ sheet: clubSheet() });
const stateAfter = (...actions: readonly BandAction[]) => actions.reduce(reduceBand, start());

describe('the address follows', () => {
  it('only once the reader has changed something', () => {
    expect(start().touched).toBe(false);
    expect(stateAfter({ type: 'grasp' }).touched, 'a handle taken and not let go').toBe(false);
    expect(stateAfter({ type: 'grasp' }, { type: 'cancel' }).touched, 'a drag given up').toBe(false);
  });

  it('a drag that is let go, a typed amount, a switch, and the way back', () => {
    const actions: readonly BandAction[] = [
      { type: 'release' },
      { type: 'set', id: 'pad', amount: 1 },
      { type: 'show', what: 'limits', on: false },
      { type: 'show', what: 'curve', on: true },
      { type: 'replace', sheet: clubSheet() },
    ];
    for (const action of actions) expect(stateAfter(action).touched, action.type).toBe(true);
  });

  it('not what it brought itself, until that is changed', () => {
    expect(stateAfter(opening('?pa=0.1&v=1')).touched).toBe(false);
    expect(stateAfter(opening('?pa=0.1&v=1'), { type: 'set', id: 'pad', amount: 1 }).touched).toBe(true);
  });
});

describe('an address that is read late', () => {
  const brought = opening('?me=0.3&pa=0.1&cu=1&o=ca&v=1');
  const amountsIn = (state: BandState) =>
    Object.fromEntries(state.sheet.links.map(({ id, statement }) => [id, amountOf(statement)]));

  it('opens whole where nothing was changed before', () => {
    const opened = stateAfter(brought);
    expect(amountsIn(opened)).toMatchObject({ meter: 0.3, pad: 0.1 });
    expect(Object.keys(amountsIn(opened))).not.toContain('cable');
    expect(opened).toMatchObject({ showLimits: true, showCurve: true, before: undefined, held: undefined });
  });

  it('leaves an amount, a switch and a rung that were changed before, and brings the rest', () => {
    const changed: readonly BandAction[] = [
      { type: 'set', id: 'pad', amount: 1 },
      { type: 'show', what: 'limits', on: false },
    ];
    const opened = stateAfter(...changed, brought);
    expect(amountsIn(opened)).toMatchObject({ meter: 0.3, pad: 1 });
    expect(opened).toMatchObject({ showLimits: false, showCurve: true, touched: true });
    const longer = addRung(clubSheet(), { name: 'Adapter', form: 'limits' });
    const own = stateAfter({ type: 'replace', sheet: longer }, brought).sheet.links.map(({ label }) => label);
    expect(own).toContain('Adapter');
  });

  it('leaves a handle in the hand, and is what giving up leads back to', () => {
    const held = stateAfter({ type: 'grasp' }, { type: 'pull', id: 'pad', expandedDb: 2 });
    const opened = reduceBand(held, brought);
    expect(amountsIn(opened).pad).toBe(amountsIn(held).pad);
    expect(opened.held?.halfSpanDb).toBe(held.held?.halfSpanDb);
    expect(amountsIn(reduceBand(opened, { type: 'cancel' }))).toMatchObject({ meter: 0.3, pad: 0.1 });
  });
});

describe('an amount typed while a handle is held', () => {
  it('leaves the ghost at the band from before the handle was taken', () => {
    const pulled: BandAction = { type: 'pull', id: 'pad', expandedDb: 2 };
    const state = stateAfter({ type: 'grasp' }, pulled, { type: 'set', id: 'meter', amount: 1 });
    expect(state.before).toEqual(clubSheet());
  });
});

describe('a band that grew to one side alone', () => {
  it('has its ghost beside it', () => {
    const chain = bandChainOf(clubSheet());
    const { interval } = chain.result.propagation;
    const lopsided = {
      ...chain,
      result: {
        ...chain.result,
        propagation: { ...chain.result.propagation, interval: { ...interval, upper: interval.upper + 0.2 } },
      },
    };
    const rows = bandRows({
      chain: lopsided,
      before: chain,
      showLimits: true,
      showCurve: false,
      handles: true,
    });
    expect(rows.filter(({ ghost }) => ghost).map(({ id }) => id)).toEqual(['socket']);
  });
});

describe('the level of a band of any width', () => {
  const level = (amount: number): string =>
    levelAnswer(
      'ascii',
      bandChainOf({
        ...clubSheet(),
        links: withLinkAmount(clubSheet(), 'pad', amount).links.filter(({ id }) => id === 'pad'),
      }),
    );

  it('has no more than four decimals and no fewer than none', () => {
    // one pad of 20 dB on a reading of 7 dBm; twice the amount over the root of 3
    expect(level(0.0001)).toBe('27.0000 dBm +/-0.0001 dB');
    expect(level(0.5)).toBe('27.00 dBm +/-0.58 dB');
    expect(level(300)).toBe('27 dBm +/-346 dB');
  });
});
