import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { heatOfDirectCurrent } from '../../src/examples/heat-of-direct-current.ts';
import { examples } from '../../src/examples/index.ts';
import { bandChainOf } from '../../src/sheet/chain.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import StageBand from '../../src/stage/StageBand.tsx';
import { wallChain } from '../../src/stage/wall-chain.ts';

const chains = examples.flatMap((example) => (example.kind === 'chain' ? [example.sheet()] : []));
const long = chains.filter(({ links }) => links.length > 6);

describe('a chain on the wall', () => {
  it('is changed at the widest rung that is stated in dB', () => {
    // the receiver’s ±2 dB, by the example
    expect(wallChain(twoPadsSheet()).rung).toBe('receiver');
    expect(wallChain({ ...twoPadsSheet(), links: [] }).rung).toBeUndefined();
  });

  it('of shares alone is changed at the part that brings most of the variance', () => {
    const sheet = heatOfDirectCurrent.sheet();
    const { budget } = bandChainOf(sheet).result.propagation;
    const most = Math.max(...budget.map(({ share }) => share));
    expect(budget.find(({ id }) => id === wallChain(sheet).rung)?.share).toBe(most);
  });

  it('stays as it is where it fits', () => {
    expect(wallChain(twoPadsSheet())).toMatchObject({ sheet: twoPadsSheet(), others: [] });
  });

  it('comes to the same whatever is taken together', () => {
    for (const sheet of chains) {
      const [now, was] = [wallChain(sheet).sheet, sheet].map((one) => bandChainOf(one).result);
      expect(now?.estimate).toBeCloseTo(was?.estimate ?? Number.NaN, 12);
      expect(now?.propagation.expanded).toBeCloseTo(was?.propagation.expanded ?? Number.NaN, 12);
    }
  });

  it('of more than six links shows five and the others as one, none of which outweighs one of the five', () => {
    expect(long.length).toBeGreaterThan(0);
    for (const sheet of long) {
      const { others } = wallChain(sheet);
      expect(others).toHaveLength(sheet.links.length - 5);
      const { budget } = bandChainOf(sheet).result.propagation;
      const shares = (isOther: boolean) =>
        budget.filter(({ id }) => others.includes(id) === isOther).map(({ share }) => share);
      expect(Math.max(...shares(true))).toBeLessThanOrEqual(Math.min(...shares(false)));
    }
  });

  it('has one row for the others, with what all of them come to', () => {
    for (const sheet of long) {
      const wall = wallChain(sheet);
      const html = render(<StageBand sheet={wall.sheet} rung={wall.rung ?? ''} others={wall.others} />);
      const figure = html.slice(0, html.indexOf('</svg>'));
      expect(figure).toContain(`${wall.others.length} small others`);
      for (const { id, label } of wall.sheet.links)
        expect(figure.includes(`>${label}<`), label).toBe(!wall.others.includes(id));
    }
  });
});
