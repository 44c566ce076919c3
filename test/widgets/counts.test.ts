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
  it('is told, and leaves the count as prepared', () => {
    const blocks = decode(blocksSpec, 'n=2.5&v=1');
    const links = decode(linkSumSpec, 'n=2.5&v=1');
    const readings = decode(readingsSpec, 'n=2.5&v=1');
    const tries = decode(triesSpec, 'sd=2.5&v=1');
    for (const { problems } of [blocks, links, readings, tries]) expect(problems).toHaveLength(1);
    expect(blocks.state.count).toBe(blocksSpec.fields.count.default);
    expect(links.state.count).toBe(linkSumSpec.fields.count.default);
    expect(readings.state.count).toBe(readingsSpec.fields.count.default);
    expect(tries.state.seed).toBe(triesSpec.fields.seed.default);
  });

  it('leaves a stack of blocks that can be drawn and said', () => {
    const { state } = decode(blocksSpec, 'n=2.5&v=1');
    expect(blocksFigure(fieldsState(state)).lanes[0]?.lengthsMm.length).toBe(state.count);
    expect(sayBlocks(state)).toContain('Stack less single block');
  });
});
