import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { MOST_TILES } from '../../src/figures/tile-line.layout.ts';
import { meaningOf, runningMeanings } from '../../src/widgets/level-line/meaning.ts';
import { lineSpec, type TileKind, type TileValue, VALUE } from '../../src/widgets/level-line/spec.ts';
import { type LineAction, lineOf, preparedLine, reduceLine } from '../../src/widgets/level-line/state.ts';
import { answersOf, meaningText, summarise, tilesOf } from '../../src/widgets/level-line/words.ts';

const nb = '\u00a0';
const number = fc.oneof(
  fc.double(),
  fc.constantFrom(0, -0, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
);
const kind = fc.constantFrom<TileKind>('level', 'less', 'gain');
const id = fc.constantFrom('t0', 't1', 't2', 't5', 'nobody');
const value = fc.integer({ min: -600, max: 600 }).map((tenths) => tenths / 10);
const tile: fc.Arbitrary<TileValue> = fc.record({ kind, value });
const line = fc.array(tile, { maxLength: MOST_TILES });
const action: fc.Arbitrary<LineAction> = fc.oneof(
  fc.record({ type: fc.constant('value' as const), id, value: number }),
  fc.record({ type: fc.constant('kind' as const), id, kind }),
  fc.record({ type: fc.constant('move' as const), id, to: number }),
  fc.record({ type: fc.constant('add' as const), kind }),
  fc.record({ type: fc.constant('remove' as const), id }),
  fc.constant({ type: 'grasp' } as const),
  fc.record({ type: fc.constant('pull' as const), id, to: number }),
  fc.constant({ type: 'release' } as const),
  fc.constant({ type: 'cancel' } as const),
  fc.constant({ type: 'reset' } as const),
  fc.record({ type: fc.constant('open' as const), tiles: line }),
);
const of = (...tiles: readonly (readonly [TileKind, number])[]): readonly TileValue[] =>
  tiles.map(([which, dB]) => ({ kind: which, value: dB }));

describe('the line under any sequence of actions', () => {
  it('has at most as many tiles as fit, each with a name of its own and a number on the grid, and can be said', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const { tiles } = actions.reduce(reduceLine, preparedLine());
        expect(tiles.length).toBeLessThanOrEqual(MOST_TILES);
        expect(new Set(tiles.map((each) => each.id)).size).toBe(tiles.length);
        for (const each of tiles) {
          expect(each.value).toBeGreaterThanOrEqual(VALUE.min);
          expect(each.value).toBeLessThanOrEqual(VALUE.max);
          expect(Math.abs(each.value * 10 - Math.round(each.value * 10))).toBeLessThan(1e-9);
        }
        expect(summarise(tiles)).not.toMatch(/NaN|Infinity|undefined/);
        for (const drawn of tilesOf(tiles)) expect(JSON.stringify(drawn)).not.toMatch(/NaN|null/);
      }),
    );
  });

  it('comes back from its own address as it was', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 12 }), (actions) => {
        const { tiles } = actions.reduce(reduceLine, preparedLine());
        const carried = { tiles: tiles.map(({ kind: which, value: dB }) => ({ kind: which, value: dB })) };
        expect(decode(lineSpec, encode(lineSpec, carried))).toMatchObject({ state: carried, problems: [] });
      }),
    );
  });

  it('is as it was when a pull is cancelled, and has the same tiles after any move', () => {
    fc.assert(
      fc.property(line, fc.array(fc.tuple(id, number)), (tiles, pulls) => {
        const held = reduceLine(lineOf(tiles), { type: 'grasp' });
        const pulled = pulls.reduce(
          (state, [who, to]) => reduceLine(state, { type: 'pull', id: who, to }),
          held,
        );
        const names = (state: typeof held) => state.tiles.map((each) => each.id).sort();
        expect(names(pulled)).toEqual(names(held));
        expect(reduceLine(pulled, { type: 'cancel' }).tiles).toEqual(held.tiles);
      }),
    );
  });

  it('puts a tile where it is told to', () => {
    const state = reduceLine(preparedLine(), { type: 'move', id: 't0', to: 2 });
    expect(state.tiles.map((each) => each.id)).toEqual(['t1', 't2', 't0']);
    expect(reduceLine(state, { type: 'move', id: 't0', to: 0 }).tiles).toEqual(preparedLine().tiles);
  });

  it('takes no tile more when it is full', () => {
    const full = lineOf(Array.from({ length: MOST_TILES }, () => ({ kind: 'gain' as const, value: 1 })));
    expect(reduceLine(full, { type: 'add', kind: 'level' })).toBe(full);
  });
});

describe('a line in an address that is read late', () => {
  const brought: LineAction = { type: 'open', tiles: of(['level', 10], ['gain', -3]) };
  const numbers = ({ tiles }: { tiles: readonly TileValue[] }): readonly number[] =>
    tiles.map((each) => each.value);

  it('opens where nothing was changed before, and is not written again', () => {
    const opened = reduceLine(preparedLine(), brought);
    expect(numbers(opened)).toEqual([10, -3]);
    expect(opened.touched).toBe(false);
  });

  it('leaves a line that was changed before', () => {
    const changed = reduceLine(preparedLine(), { type: 'value', id: 't1', value: -6 });
    expect(reduceLine(changed, brought)).toEqual(changed);
  });

  it('leaves a tile in the hand, and is what giving up leads back to', () => {
    const held = reduceLine(reduceLine(preparedLine(), { type: 'grasp' }), { type: 'pull', id: 't0', to: 2 });
    const opened = reduceLine(held, brought);
    expect(numbers(opened)).toEqual([-20, -6, 27]);
    expect(numbers(reduceLine(opened, { type: 'cancel' }))).toEqual([10, -3]);
  });
});

describe('what a line means', () => {
  it('is told by its milliwatts alone: one is a level, none a ratio, any other number nothing', () => {
    fc.assert(
      fc.property(line, (tiles) => {
        const count = (which: TileKind): number => tiles.filter((each) => each.kind === which).length;
        const milliwatts = count('level') - count('less');
        expect(meaningOf(tiles).kind).toBe(
          milliwatts === 1 ? 'level' : milliwatts === 0 ? 'gain' : 'nothing',
        );
      }),
    );
  });

  it('does not depend on the order of the tiles', () => {
    fc.assert(
      fc.property(
        line.chain((tiles) =>
          fc.tuple(fc.constant(tiles), fc.shuffledSubarray([...tiles], { minLength: tiles.length })),
        ),
        ([tiles, other]) => {
          expect(meaningText('shown', meaningOf(other))).toBe(meaningText('shown', meaningOf(tiles)));
        },
      ),
    );
  });

  it('is the same whether a level goes through gains in turn or their ratios are multiplied', () => {
    fc.assert(
      fc.property(value, fc.array(value, { maxLength: 5 }), (level, gains) => {
        const meaning = meaningOf(of(['level', level], ...gains.map((gain) => ['gain', gain] as const)));
        const milliwatts = gains.reduce((power, gain) => power * 10 ** (gain / 10), 10 ** (level / 10));
        expect(meaning.kind === 'level' && 10 ** (meaning.levelDbm / 10) / milliwatts).toBeCloseTo(1, 9);
      }),
    );
  });

  it('ends as the whole line means', () => {
    fc.assert(
      fc.property(line, (tiles) => {
        const running = runningMeanings(tiles);
        expect(running).toHaveLength(tiles.length);
        if (tiles.length > 0) expect(running.at(-1)).toEqual(meaningOf(tiles));
      }),
    );
  });
});

describe('the answers to lines of the lesson', () => {
  const said = (...tiles: readonly (readonly [TileKind, number])[]): string =>
    answersOf(of(...tiles))
      .map(({ figure, words }) => `${figure} | ${words}`)
      .join(' || ');

  it('are levels, ratios and differences, by hand', () => {
    expect(said(['level', 27], ['gain', -20], ['gain', -6])).toBe(
      `1.0${nb}dBm | 1.26${nb}mW: one level and its gains make a level`, // 10^0.1 mW
    );
    expect(said(['level', 7], ['gain', 20], ['gain', 0.1])).toContain(`27.1${nb}dBm | 513${nb}mW`);
    expect(said(['level', 27], ['less', 17])).toContain(
      `+10.0${nb}dB | ×10.0 in power: one level less another`,
    );
    expect(said(['gain', -20], ['gain', -6])).toContain(`−26.0${nb}dB | ÷398 in power: a ratio`);
    expect(said()).toContain('No tile yet');
  });

  it('say what two levels claim, and what was meant', () => {
    expect(said(['level', 17], ['level', 17])).toBe(
      `This sum means nothing | adding levels multiplies their powers, which gives milliwatts times milliwatts. Read as a level, it would claim 2.51${nb}W || What you may have meant | the signals together in one load: 20.0${nb}dBm if they are unrelated, up to 23.0${nb}dBm if they are of one frequency and in phase`,
    );
  });

  it('offer no sum of signals where gains or a difference are among them', () => {
    expect(said(['level', 17], ['level', 17], ['gain', -3])).not.toContain('may have meant');
    expect(said(['less', 17])).toContain('one divided by milliwatts');
  });

  it('claim no power that no one could write down', () => {
    const much = said(['level', 60], ['level', 60], ['level', 60]);
    expect(much).toContain('which gives no power');
    expect(much).not.toMatch(/\d{7}/);
  });
});
