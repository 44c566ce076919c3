import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { readingsSpec } from '../../src/widgets/few-readings/spec.ts';
import { figureOf as blocksFigure } from '../../src/widgets/gauge-blocks/figure.ts';
import { blocksSpec } from '../../src/widgets/gauge-blocks/spec.ts';
import { summarise as sayBlocks } from '../../src/widgets/gauge-blocks/words.ts';
import { linkSumSpec } from '../../src/widgets/link-sum/spec.ts';
import { fieldsState } from '../../src/widgets/parts/fields.ts';
import { triesSpec } from '../../src/widgets/tries/spec.ts';

describe('an address with half a thing in a count', () => {
  it.each([
    ['blocks', blocksSpec, 'n', 'count'],
    ['links', linkSumSpec, 'n', 'count'],
    ['readings', readingsSpec, 'n', 'count'],
    ['a seed', triesSpec, 'sd', 'seed'],
  ] as const)('is told, and leaves the number of %s as prepared', (_, spec, key, name) => {
    const { state, problems } = decode(spec, `${key}=2.5&v=1`);
    expect(problems).toHaveLength(1);
    const { [name]: count } = state as Readonly<Record<string, unknown>>;
    const { [name]: field } = spec.fields as Readonly<Record<string, { readonly default: unknown }>>;
    expect(count).toBe(field?.default);
  });

  it('leaves a stack of blocks that can be drawn and said', () => {
    const { state } = decode(blocksSpec, 'n=2.5&v=1');
    expect(blocksFigure(fieldsState(state)).lanes[0]?.lengthsMm.length).toBe(state.count);
    expect(sayBlocks(state)).toContain('Stack less single block');
  });
});
