import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import BandRulers from '../../src/widgets/band-rulers/BandRulers.tsx';
import LevelLine from '../../src/widgets/level-line/LevelLine.tsx';
import RatioRuler from '../../src/widgets/ratio-ruler/RatioRuler.tsx';
import TwoMeans from '../../src/widgets/two-means/TwoMeans.tsx';
import TwoSignals from '../../src/widgets/two-signals/TwoSignals.tsx';

const widgets: Readonly<Record<string, () => VNode>> = {
  'ruler of ratios': () => <RatioRuler />,
  'line of levels': () => <LevelLine />,
  'two signals': () => <TwoSignals instance="two" />,
  'one band on three rulers': () => <BandRulers />,
  'two means': () => <TwoMeans instance="means" />,
};
const markup = (name: string): string => {
  const make = widgets[name];
  if (make === undefined) throw new Error(`wish a widget, got ${name}`);
  return render(make());
};
const all = (text: string, pattern: RegExp): readonly string[] =>
  [...text.matchAll(pattern)].map(([, group]) => group ?? '');

describe.each(Object.keys(widgets))('%s, as the server writes it', (name) => {
  const text = markup(name);

  it('has no id twice, and nothing that points at an id that is missing', () => {
    const ids = all(text, /\sid="([^"]+)"/g);
    expect(new Set(ids).size).toBe(ids.length);
    const wanted = all(text, /\s(?:for|aria-labelledby|aria-describedby)="([^"]+)"/g).flatMap((value) =>
      value.split(' '),
    );
    expect(wanted.filter((id) => !ids.includes(id))).toEqual([]);
  });

  it('gives every control a name', () => {
    const labelled = all(text, /<label[^>]*\sfor="([^"]+)"/g);
    const controls = [...text.matchAll(/<(?:input|select|textarea)\b[^>]*>/g)].map(([tag]) => tag);
    const bare = controls.filter((tag) => {
      const id = /\sid="([^"]+)"/.exec(tag)?.[1];
      return !/\saria-label="[^"]+"/.test(tag) && !(id !== undefined && labelled.includes(id));
    });
    expect(controls.length).toBeGreaterThan(2);
    expect(bare).toEqual([]);
  });

  it('is drawn for wide and for narrow places, and has its states as a table', () => {
    expect(all(text, /data-frame="([^"]+)"/g)).toEqual(['wide', 'narrow']);
    expect(text).toMatch(/<table[^>]*><caption>[\s\S]*\d[\s\S]*<\/table>/);
  });

  it('asks for no style of its own, shows no broken number, and keeps its announcer quiet', () => {
    expect(text).not.toMatch(/\sstyle=|NaN|Infinity|undefined|\[object/);
    expect(text).toMatch(/aria-live="polite"><\/p>/);
  });

  it('is the same each time', () => expect(markup(name)).toBe(text));
});

describe('a handle of a figure', () => {
  it('has a control of the same quantity elsewhere, so that no one has to drag', () => {
    for (const name of Object.keys(widgets)) {
      const text = markup(name);
      const handles = new Set(all(text, /data-handle="([^"]+)"/g));
      expect(handles.size, name).toBeGreaterThan(0);
      expect(all(text, /type="(range)"/g).length, name).toBeGreaterThan(0);
      expect(all(text, /inputmode="(decimal)"/g).length, name).toBeGreaterThan(0);
    }
  });
});
