import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { boards } from '../../src/examples/four-readings-one-limit.ts';
import { examples } from '../../src/examples/index.ts';
import { starts, wallStarts } from '../../src/examples/starts.ts';
import StageBack from '../../src/stage/StageBack.tsx';
import StageBand from '../../src/stage/StageBand.tsx';
import StageBoards from '../../src/stage/StageBoards.tsx';
import StageEnvelope from '../../src/stage/StageEnvelope.tsx';
import StageLevels from '../../src/stage/StageLevels.tsx';
import StageScope from '../../src/stage/StageScope.tsx';
import { pressText } from '../../src/stage/StageWhatIf.tsx';
import { strings } from '../../src/stage/strings.ts';
import { wallChain } from '../../src/stage/wall-chain.ts';

const nb = '\u00a0';
const all = (text: string, pattern: RegExp): readonly string[] =>
  [...text.matchAll(pattern)].map(([, group]) => group ?? '');
const answerOf = (wall: VNode): string => all(render(wall), /class="stage-answer">([^<]*)</g)[0] ?? '';
const fieldOf = (wall: VNode) => {
  const [, legend = '', value = ''] = /<legend>([^<]*)<[\s\S]*?value="([^"]*)"/.exec(render(wall)) ?? [];
  return { legend, value };
};

describe('the number that a speaker changes in an example', () => {
  const chains = examples.flatMap((example) =>
    example.kind === 'chain' ? [{ slug: example.slug, wall: wallChain(example.sheet()) }] : [],
  );

  it.each(chains)('$slug has one along its chain, in the unit it is stated in', ({ wall }) => {
    const { sheet, rung = '', others } = wall;
    const link = sheet.links.find(({ id }) => id === rung);
    const html = render(<StageBand sheet={sheet} rung={rung} others={others} />);
    expect(all(html, /<legend>([^<]*)</g)).toEqual([`${link?.label} wrong by`]);
    const unit = link?.unit === 'dB' ? 'dB' : `% of ${link?.unit === 'percentOfVolts' ? 'volts' : 'power'}`;
    expect(all(html, /class="number-field-unit"[^>]*>([^<]*)</g)).toEqual([unit]);
    // what is heard after the number
    const said = link?.unit === 'dB' ? 'decibels' : unit.replace('%', 'percent');
    expect(all(html, /<span id="[^"]*u" hidden>([^<]*)</g)).toEqual([said]);
  });

  it('is the trace of the load that was forgotten, with the load in its place', () => {
    const wall = <StageScope start={wallStarts['load-forgotten']()} presses="peakToPeak" />;
    expect(fieldOf(wall)).toEqual({ legend: 'Trace, trough to crest', value: '8.9' });
    // 0.2 W are 23.0 dBm
    expect(answerOf(wall)).toMatch(/^2(2\.9\d|3\.0\d)/);
  });

  it('is the frequency beyond the bandwidth, and the answer says how far beyond', () => {
    const start = starts['beyond-the-bandwidth']();
    expect(fieldOf(<StageScope start={start} />)).toEqual({ legend: 'Frequency', value: '145.00' });
    // 145 / 98.06, the two bandwidths as 1/√(1/100² + 1/500²)
    expect(answerOf(<StageScope start={start} />)).toBe('No number: 1.48 × bandwidth');
    expect(answerOf(<StageScope start={{ ...start, frequency: 20 }} />)).toMatch(/dBm/);
  });

  it('is the directivity for the whip, and the answer what the meter may show', () => {
    const start = starts['swr-of-a-whip']();
    const at = (directivity: number): string =>
      answerOf(<StageBack start={{ ...start, directivity }} presses="directivity" />);
    expect(fieldOf(<StageBack start={start} presses="directivity" />).value).toBe('25');
    expect(at(25)).toMatch(/^It may show 1\.3\d to 1\.\d\d$/);
    expect(at(40)).toMatch(/^It may show 1\.4\d to 1\.5\d$/);
    // what is spoken after a press begins with it, and so does what the figure is said to show
    const said = /<desc[^>]*>([^<]*)/.exec(render(<StageBack start={start} presses="directivity" />))?.[1];
    expect(said).toMatch(/It may show 1\.3\d to 1\.\d\d\. /);
  });

  it('is the peak of the keyed one, and the pad of the log', () => {
    // 22 of 50 units of 2 W
    expect(answerOf(<StageEnvelope start={starts['keyed-and-spoken']()} />)).toContain(`880${nb}mW`);
    expect(answerOf(<StageLevels start={starts['thirty-decibels-forgotten']()} />)).toContain(
      `\u221220.3${nb}dBm`,
    );
  });

  it('is U of the boards, two of which nobody can tell until it is small enough', () => {
    const of = (expanded: number): string => answerOf(<StageBoards {...boards()} expanded={expanded} />);
    expect(of(0.5)).toBe('Can’t tell: 2 of 4');
    // 22.85 lies 0.15 below its limit, 23.1 a tenth above
    expect(of(0.12)).toBe('Can’t tell: 1 of 4');
    expect(of(0.05)).toBe('Can’t tell: 0 of 4');
  });

  it('is spoken with the verdict on each board, since their count may stay', () => {
    expect(strings.boards.said('0.50 decibels', ['Board 1 inside', 'Board 2 can’t tell'])).toBe(
      'With U 0.50 decibels: Board 1 inside, Board 2 can’t tell.',
    );
  });
});

describe('a press as it is spoken', () => {
  it('has no noughts at its end', () => {
    expect(pressText(0.5, 'dB')).toBe('0.5 decibels');
    expect(pressText(1, 'dB')).toBe('1 decibel');
    expect(pressText(10, 'MHz')).toBe('10 megahertz');
    expect(pressText(0.05, 'dB')).toBe('0.05 decibels');
    expect(pressText(30, 'none')).toBe('30');
  });

  it('of a level is in decibels: a difference of levels is a ratio', () => {
    expect(pressText(0.25, 'dBm')).toBe('0.25 decibels');
    expect(pressText(3, 'dBm')).toBe('3 decibels');
  });
});
