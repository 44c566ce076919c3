import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import type { AddressSpec } from '../../src/address/field-spec.ts';
import { decodeEntries, encodePlainly } from '../../src/bench/address/address.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { readBorrowFragment } from '../../src/borrow/address.ts';
import { outcomeOf } from '../../src/borrow/outcome.ts';
import { readEntries } from '../../src/borrow/read-entries.ts';
import type { SumExample } from '../../src/examples/example.ts';
import { exampleAt, examples } from '../../src/examples/index.ts';
import { starts } from '../../src/examples/starts.ts';
import { figureSheet, frameAddress } from '../../src/layouts/examples/figure-of.ts';
import { ownNumbersAddress, padEntries } from '../../src/layouts/examples/own-numbers.ts';
import { embedsOf } from '../../src/lessons/embeds.ts';
import { figureSpecs } from '../lessons/figures.ts';
import { lessonFiles } from '../lessons/lesson-files.ts';

const sums = examples.filter((example): example is SumExample => example.kind === 'sum');

function opened(slug: string) {
  const measurement = exampleAt(slug).bench?.();
  if (measurement === undefined) throw new Error(`${slug} must open on the bench`);
  return pointResult(measurement, 'point1');
}

function levelOn(slug: string): number {
  const shown = opened(slug);
  if (!shown.inRange) throw new Error(`${slug} must be in range, got ${shown.reason.code}`);
  return shown.result.chain.result.estimate;
}

describe('an example opened with its own numbers', () => {
  it.each(examples)('$slug stands in fields that take others, and nothing there is wrong', (example) => {
    const [path = '', fragment = ''] = ownNumbersAddress(example).split('#');
    expect(fragment).not.toBe('');
    if (path === '/bench/borrow/') {
      const { entries, problems } = readBorrowFragment(fragment);
      expect(problems).toEqual([]);
      expect(entries).toEqual(padEntries());
      return;
    }
    expect(path).toBe('/bench/');
    const { entries, problems } = decodeEntries(fragment);
    expect(problems).toEqual([]);
    expect(encodePlainly(entries)).toBe(fragment);
    expect(readMeasurement(entries).problems).toEqual([]);
  });

  it('says beside the button what the bench leaves out, where it does', () => {
    expect(sums.filter(({ benchSays }) => benchSays === undefined).map(({ slug }) => slug)).toEqual([
      'beyond-the-bandwidth',
      'four-readings-one-limit',
    ]);
  });

  it('has 2 W of peak envelope from 0.88 W of a word', () => {
    expect(levelOn('keyed-and-spoken')).toBeCloseTo(10 * Math.log10(2000), 2);
  });

  it('has 4.8 W in the whip', () => {
    expect(levelOn('swr-of-a-whip')).toBeCloseTo(10 * Math.log10(4800), 6);
  });

  it('has 9.7 dBm in front of the pad', () => {
    expect(levelOn('thirty-decibels-forgotten')).toBeCloseTo(9.7, 9);
  });

  it('gives no number where the load is missing', () => {
    const shown = opened('load-forgotten');
    expect(shown.inRange ? 'in range' : shown.reason.code).toBe('noTermination');
  });

  it('has the pad as the example has it', () => {
    const { checked } = readEntries(padEntries());
    if (checked === undefined) throw new Error('the pad must be readable');
    const outcome = outcomeOf(checked);
    if (outcome.kind !== 'part') throw new Error(`a part must be there, got ${outcome.kind}`);
    const example = sums.find(({ slug }) => slug === 'pad-measured-at-dc')?.outcomes()[0]?.stated?.result;
    expect(outcome.part.value).toBeCloseTo(example?.estimate ?? 0, 9);
    expect(outcome.part.propagation.expanded).toBeCloseTo(example?.propagation.expanded ?? 0, 9);
  });
});

describe('the figure of an example in a frame', () => {
  const widgets = new Map(embedsOf(lessonFiles()).map(({ slug, figure }) => [slug, figure]));

  it.each(examples)(
    '$slug has an address of its own, or the address of a lesson’s with its numbers',
    (example) => {
      const [, widget = '', query = ''] =
        /^\/embed\/([a-z-]+)\/(?:\?(.+))?$/.exec(frameAddress(example)) ?? [];
      if (figureSheet(example)) {
        expect([widget, query]).toEqual([example.slug, '']);
        return;
      }
      const { tag, attributes } = widgets.get(widget) ?? never(widget);
      // the attributes of a figure's tag are texts and marks; only texts tell its fields
      const spec: AddressSpec = figureSpecs[tag]?.(attributes as Record<string, string>) ?? never(tag);
      const { state, problems } = decode(spec, query);
      expect(problems).toEqual([]);
      expect(state).toMatchObject(starts[example.slug as keyof typeof starts]());
    },
  );
});

function never(what: string): never {
  throw new RangeError(`it must be there, got none for ${what}`);
}
