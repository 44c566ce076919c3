import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { wholeSumOf } from '../../src/sheet/evaluated-link-sum.ts';
import { foundMeanOf } from '../../src/sheet/evaluated-readings.ts';
import { clubReadings } from '../../src/sheet/evening.ts';
import { halfDecibels } from '../../src/sheet/link-sum.ts';
import { triedOf } from '../../src/sheet/tried.ts';
import { clubTry } from '../../src/sheet/tries.ts';
import StageLinkSum from '../../src/stage/StageLinkSum.tsx';
import StageReadings from '../../src/stage/StageReadings.tsx';
import StageTries from '../../src/stage/StageTries.tsx';

const nb = '\u00a0';

/** Each figure of the track as it stands on the wall, with its one number, how many rows it has on paper, and what can be pressed. */
const walls = [
  {
    name: 'links that are added',
    make: () => <StageLinkSum prepared={wholeSumOf(halfDecibels(1))} />,
    answer: `k = 2 holds 100${nb}%`,
    rows: 5,
    pressed: 'Links in the sum',
  },
  {
    name: 'trials',
    make: () => <StageTries prepared={triedOf(clubTry())} />,
    answer: 'Propagation will do',
    rows: 4,
    pressed: 'Limits of the volts',
  },
  {
    name: 'a few readings',
    make: () => <StageReadings prepared={foundMeanOf(clubReadings())} />,
    answer: `26.86${nb}dBm ±0.41${nb}dB`,
    rows: 4,
    pressed: 'Readings taken',
  },
] as const;

describe.each(walls)('$name on the wall', ({ make, answer, rows, pressed }) => {
  const markup = render(make());

  it('has one number in large type, and all of them on paper', () => {
    expect(markup).toContain(`<p class="stage-answer">${answer}</p>`);
    const table = /<table class="stage-states">([\s\S]*?)<\/table>/.exec(markup)?.[1] ?? '';
    expect([...table.matchAll(/<tr>/g)]).toHaveLength(rows);
  });

  it('has one number that can be pressed up and down, by its name', () => {
    expect(markup).toContain(pressed);
    expect([...markup.matchAll(/<input\b/g)]).toHaveLength(1);
    expect([...markup.matchAll(/<button\b/g)].length).toBeGreaterThanOrEqual(3);
  });

  it('is drawn once, for the wall, and asks for no style', () => {
    expect([...markup.matchAll(/data-frame="([^"]+)"/g)].map(([, frame]) => frame)).toEqual(['stage']);
    expect(markup).not.toMatch(/ style=|NaN|Infinity|undefined/);
    expect(render(make())).toBe(markup);
  });
});
