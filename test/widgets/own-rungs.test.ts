import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { bandChainOf } from '../../src/sheet/chain.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import {
  addRung,
  isOwn,
  LONGEST_NAME,
  MOST_OWN,
  type OwnForm,
  withName,
  withoutRung,
} from '../../src/widgets/reading-band/own-rungs.ts';
import { bandSpec, fromAddressState, toAddressState } from '../../src/widgets/reading-band/spec.ts';
import { type BandState, initialState, reduceBand } from '../../src/widgets/reading-band/state.ts';

const shown = { showLimits: true, showCurve: false };
const prepared = clubSheet();
const start = (): BandState => initialState({ sheet: prepared });

/** What a press in the builder does, or a change of an amount beside it. */
type Press =
  | { readonly type: 'add'; readonly name: string; readonly form: OwnForm }
  | { readonly type: 'remove'; readonly id: string }
  | { readonly type: 'name'; readonly id: string; readonly name: string }
  | { readonly type: 'set'; readonly id: string; readonly amount: number };

function press(state: BandState, action: Press): BandState {
  const replaced = (sheet: BandState['sheet']): BandState => reduceBand(state, { type: 'replace', sheet });
  switch (action.type) {
    case 'add':
      return replaced(addRung(state.sheet, action));
    case 'remove':
      return replaced(withoutRung(state.sheet, action.id));
    case 'name':
      return replaced(withName(state.sheet, action.id, action.name));
    case 'set':
      return reduceBand(state, action);
  }
}
const built = (...actions: readonly Press[]): BandState => actions.reduce(press, start());
const own = ({ sheet }: BandState) => sheet.links.filter(isOwn);

const id = fc.constantFrom('national', 'meter', 'pad', 'own1', 'own2', 'own6', 'nobody');
const name = fc.oneof(fc.string({ unit: 'grapheme' }), fc.constant('a\n\u202eb'.repeat(20)));
const action: fc.Arbitrary<Press> = fc.oneof(
  fc.record({
    type: fc.constant('add' as const),
    name,
    form: fc.constantFrom('limits' as const, 'expanded' as const),
  }),
  fc.record({ type: fc.constant('remove' as const), id }),
  fc.record({ type: fc.constant('name' as const), id, name }),
  fc.record({ type: fc.constant('set' as const), id, amount: fc.double({ min: 0, max: 3, noNaN: true }) }),
);

describe('a chain that a reader builds, under any sequence of actions', () => {
  it('has rungs with ids of their own, and no more than there is room for', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = built(...actions);
        const ids = state.sheet.links.map((link) => link.id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(own(state).length).toBeLessThanOrEqual(MOST_OWN);
        for (const { label } of own(state)) expect(label.length).toBeLessThanOrEqual(LONGEST_NAME);
      }),
    );
  });

  it('comes back from its address as it was: the same rungs in the same order, amounts and names', () => {
    const spec = bandSpec(prepared, shown);
    fc.assert(
      fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
        const { sheet } = built(...actions);
        const { state, problems } = decode(spec, encode(spec, toAddressState(prepared, sheet, shown)));
        expect(problems).toEqual([]);
        const plain = ({ links }: typeof sheet) =>
          links.map(({ label, statement }) => ({ label, statement }));
        expect(plain(fromAddressState(prepared, state).sheet)).toEqual(plain(sheet));
      }),
    );
  });
});

describe('a rung that is added', () => {
  const band = (state: BandState): number => bandChainOf(state.sheet).result.propagation.expanded;

  it('stands next to the transmitter and widens the band', () => {
    const state = built({ type: 'add', name: 'Second pad', form: 'limits' });
    expect(state.sheet.links.at(-1)?.label).toBe('Second pad');
    expect(band(state)).toBeGreaterThan(band(start()));
    expect(state.before, 'what was there before is the ghost').toEqual(prepared);
  });

  it('with a certificate has no limits, so that the worst case guarantees nothing of it', () => {
    const state = built({ type: 'add', name: 'Meter', form: 'expanded' });
    expect(bandChainOf(state.sheet).result.worstCase.unlimited).toContain(own(state)[0]?.id);
  });

  it('and taken out again leaves the chain as it was', () => {
    const state = built({ type: 'add', name: 'x', form: 'limits' }, { type: 'remove', id: 'own1' });
    expect(state.sheet).toEqual(prepared);
  });

  it('gets a name on one line, cut to what the figure has room for', () => {
    const state = built(
      { type: 'add', name: '', form: 'limits' },
      { type: 'name', id: 'own1', name: `a\nb${'c'.repeat(99)}` },
    );
    expect(own(state)[0]?.label).toBe(`a b${'c'.repeat(LONGEST_NAME - 3)}`);
    const wide = built(
      { type: 'add', name: '', form: 'limits' },
      { type: 'name', id: 'own1', name: 'MY OWN DIRECTIONAL COUPLER' },
    );
    expect(own(wide)[0]?.label, 'capitals take more room').toBe('MY OWN DIRECTIONA');
    expect(built({ type: 'name', id: 'pad', name: 'mine' }).sheet, 'a prepared rung keeps its').toEqual(
      prepared,
    );
  });
});

describe('a chain with every rung taken out', () => {
  it('is a bare reading, exact', () => {
    const state = built(...prepared.links.map((link): Press => ({ type: 'remove', id: link.id })));
    expect(bandChainOf(state.sheet).result.propagation.expanded).toBe(0);
  });
});
