import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { levelDbm } from '#compute';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { AllPoints } from '../../src/bench/views/AllPoints.tsx';
import { AllPointsPart } from '../../src/bench/views/AllPointsPart.tsx';
import { BehindParts } from '../../src/bench/views/BehindParts.tsx';
import { Fetching } from '../../src/bench/views/Fetching.tsx';
import { ResultPart } from '../../src/bench/views/ResultPart.tsx';
import { TakePart } from '../../src/bench/views/TakePart.tsx';
import { measurementOf } from '../../src/sheet/at-point.ts';
import { blankSheet } from '../../src/sheet/blank-sheet.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import type { Measurement } from '../../src/sheet/measurement.ts';
import { anyComputed } from './any-measurement.ts';
import { resultsOf, typedMeasurement } from './typed-sheet.ts';

const club = (): Measurement => measurementOf(clubSheet());

/** Result, what stands behind it, and all points, as the page has them for the first point. */
function markupOf(measurement: Measurement): string {
  const all = measurement.points.map(({ id }) => pointResult(measurement, id));
  const [shown] = all;
  if (shown === undefined) throw new Error('markupOf: wish a point, got none');
  const entries = blankSheet(measurement.setup.method);
  const defence = { entries, problems: [], measurement, shown, send: () => undefined };
  return render(
    <>
      <ResultPart shown={shown} />
      {measurement.points.length > 1 && <AllPoints points={measurement.points} all={all} />}
      <BehindParts shown={shown} all={all} measurement={measurement} />
      <TakePart {...defence} version="1.2.3" own standing={() => defence} />
    </>,
  );
}

const textsOf = (markup: string): string => markup.replace(/<[^>]+>/g, ' ');
const rowsOf = (markup: string, of: string): string[] => {
  const [, table = ''] = new RegExp(`<table class="${of}">(.*?)</table>`, 's').exec(markup) ?? [];
  return [...table.matchAll(/<tr>/g)].map(([row]) => row);
};

describe('what the bench shows of any usable sheet', () => {
  it('has no hole in it, no style of its own, and no id twice', () => {
    fc.assert(
      fc.property(anyComputed, ({ measurement }) => {
        const markup = markupOf(measurement);
        expect(markup).not.toMatch(/NaN|Infinity|undefined|null|\[object| style=/);
        const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
        expect(ids).toEqual([...new Set(ids)]);
      }),
      { numRuns: 12 },
    );
  });
});

describe('one point', () => {
  const markup = markupOf(club());

  it('shows answers, verdict, ways, distribution, stated forms, budget and robustness', () => {
    for (const part of ['cautions', 'ways', 'stated', 'budget', 'robustness', 'copy'])
      expect(markup).toContain(`aria-labelledby="${part}"`);
    expect(markup).toContain('27.10');
    // head, six links, combined, expanded
    expect(rowsOf(markup, 'budget')).toHaveLength(9);
    expect(rowsOf(markup, 'robustness')).toHaveLength(7);
    expect([...markup.matchAll(/class="share-bar"/g)]).toHaveLength(6);
  });

  it('shows neither a chart nor a table over points', () => {
    const { points } = club();
    expect(render(<AllPointsPart points={points} all={[]} />)).toBe('');
  });

  it('says which link was assumed and which was left out', () => {
    const links = club().links.map((link) =>
      link.id === 'pad'
        ? { ...link, assumed: true as const }
        : link.id === 'coax'
          ? { ...link, off: true as const }
          : link,
    );
    const told = textsOf(markupOf({ ...club(), links }));
    expect(told).toContain('assumed, no data sheet');
    expect(told).toContain('Left out for a what-if: 3 m of thin coax.');
  });
});

describe('a method out of range', () => {
  const out = markupOf({
    ...club(),
    setup: { method: 'padsIntoMeter', shows: 'mean', largest: levelDbm(0) },
  });

  it('shows the reason in place of every number that depends on it', () => {
    expect(textsOf(out)).toContain('above the meter’s largest level');
    for (const part of ['ways', 'stated', 'budget', 'robustness'])
      expect(out).not.toContain(`aria-labelledby="${part}"`);
    expect(out).not.toMatch(/class="(answers|zones|curve)/);
  });

  it('still shows what the chain may suffer, and lets the record be taken along', () => {
    expect(textsOf(out)).toContain('Without “20 dB pad” it gets');
    expect(out).toContain('aria-labelledby="copy"');
  });
});

describe('several points', () => {
  const [point] = club().points;
  const several = (results: number): string => {
    if (point === undefined) throw new Error('several: wish a point');
    const measurement: Measurement = {
      ...club(),
      points: [1, 2, 3].map((position) => ({ ...point, id: `p${position}`, label: `Setting ${position}` })),
    };
    const all = measurement.points.map(({ id }, index) =>
      index < results ? pointResult(measurement, id) : undefined,
    );
    return render(<AllPoints points={measurement.points} all={all} />);
  };

  it('stand in a table and in a chart for either width', () => {
    const markup = several(3);
    expect(rowsOf(markup, 'points')).toHaveLength(4);
    expect([...markup.matchAll(/class="points-chart figure-(wide|narrow)"/g)]).toHaveLength(2);
    expect(textsOf(markup)).toContain('Of the points 3 are inside.');
  });

  it('have the raw readings of each of them below, for paper', () => {
    const measurement = typedMeasurement({
      points: [{ readings: '16,9\n17,0' }, { readings: '16,2 dBm\n42 mW' }, { readings: '7,5 W' }],
    });
    const markup = render(<AllPoints points={measurement.points} all={resultsOf(measurement)} />);
    const [, list = ''] = /<ul class="on-paper">(.*?)<\/ul>/s.exec(markup) ?? [];
    const items = list.split('</li>').map((item) => textsOf(item).replaceAll('\u00a0', ' '));
    expect(items[0]).toContain('Point 1: Reading 16.9, 17.0; mean');
    // turned from another unit: no more digits than any display has
    expect(items[1]).toContain('Point 2: Reading 16.2000, 16.2325; mean');
    expect(items[2]).toContain('38.7506 dBm');
  });

  it('say which of them are still being worked out', () => {
    const markup = textsOf(several(1));
    expect(markup).toContain('1 is inside, 2 are still being worked out');
    expect(markup).toContain('being worked out');
  });
});

describe('the place of a part that is fetched', () => {
  const again = (): void => undefined;

  it('says that it is on its way, or that it is not and how to ask for it again', () => {
    expect(render(<Fetching failed={false} again={again} />)).toBe('<p role="status">Being fetched …</p>');
    expect(render(<Fetching failed={true} again={again} class="late" />)).toBe(
      '<p class="late" role="status">This part could not be fetched. <button type="button">Try again</button></p>',
    );
  });
});
