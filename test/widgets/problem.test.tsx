import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { InstrumentChoice } from '../../src/bench/instruments/InstrumentField.tsx';
import { fieldPath } from '../../src/bench/instruments/read-instrument.ts';
import { ShelfStatus } from '../../src/bench/instruments/ShelfParts.tsx';
import { emptyShelf } from '../../src/bench/instruments/shelf.ts';
import { instrumentStrings } from '../../src/bench/instruments/strings.ts';
import { demonstration } from '../../src/bench/state/demonstration.ts';
import { EntryForm } from '../../src/bench/views/EntryForm.tsx';
import Borrow from '../../src/borrow/Borrow.tsx';
import Compare from '../../src/compare/Compare.tsx';
import { blankInstrument } from '../../src/instruments/blank.ts';
import { INSTRUMENT_KINDS } from '../../src/instruments/instrument.ts';
import { questionOf } from '../../src/questions/index.ts';
import StageGuess from '../../src/stage/StageGuess.tsx';
import FormulaExample from '../../src/widgets/formula-example/FormulaExample.tsx';
import { NumberField } from '../../src/widgets/parts/NumberField.tsx';
import { Problem } from '../../src/widgets/parts/Problem.tsx';
import { TextField } from '../../src/widgets/parts/TextField.tsx';

const nothing = (): void => {};
const text = (value: string, problem?: string): string =>
  render(<TextField id="f" label="Loss" value={value} help="In dB." problem={problem} onText={nothing} />);
const choice = (problem?: string): string =>
  render(
    <InstrumentChoice
      value={blankInstrument('meter')}
      problems={problem === undefined ? [] : [{ path: fieldPath('kind'), label: 'Kind', problem }]}
      onChange={nothing}
      name="kind"
      options={INSTRUMENT_KINDS}
      words={instrumentStrings.kinds}
    />,
  );
const shelf = (problem?: 'refused'): string =>
  render(
    <ShelfStatus
      shelf={{ items: [], unreadable: 0, ...(problem && { problem }) }}
      waiting={false}
      latest={emptyShelf}
      reread={nothing}
      send={nothing}
    />,
  );

/** Regions for a problem, as their tag and what stands in them. */
const regions = (html: string): { tag: string; words: string }[] =>
  [...html.matchAll(/(<p class="problem"[^>]*>)([^<]*)<\/p>/g)].map(([, tag = '', words = '']) => ({
    tag,
    words,
  }));

const fields: Readonly<Record<string, () => VNode>> = {
  'a number': () => (
    <NumberField
      label="Loss"
      shown="3"
      unit="dB"
      read={async () => ({ ok: true, value: 3 })}
      onValue={nothing}
    />
  ),
  'a text': () => <TextField id="f" label="Loss" value="3" onText={nothing} />,
  'a formula’s numbers': () => (
    <FormulaExample id="powerToLevel" given={{ powerW: 0.2 }} labels={{}} result="23.0103" />
  ),
  'hands in a room': () => <StageGuess question={questionOf('chain-weakest-rung')} />,
  'a choice of an instrument': () => (
    <InstrumentChoice
      value={blankInstrument('meter')}
      problems={[]}
      onChange={nothing}
      name="kind"
      options={INSTRUMENT_KINDS}
      words={instrumentStrings.kinds}
    />
  ),
};

describe.each(Object.entries(fields))('the field for %s', (_, field) => {
  const html = render(field());

  it('has a place from which it is told what is wrong, before anything is', () => {
    const [region, ...others] = regions(html);
    expect(others).toEqual([]);
    expect(region?.words).toBe('');
    expect(region?.tag).toContain('role="status"');
    expect(region?.tag).not.toMatch(/aria-live|hidden/);
  });

  it('is described by what is there alone', () => {
    const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
    for (const [, list = ''] of html.matchAll(/aria-describedby="([^"]*)"/g))
      for (const id of list.split(' ')) expect(ids).toContain(id);
    expect(html).not.toContain('aria-invalid');
  });
});

describe('what is wrong', () => {
  it('comes into the place that was there before, whose tag stays as it is', () => {
    for (const field of [(problem?: string) => text('x', problem), choice]) {
      const [[before], [after]] = [regions(field()), regions(field('No number.'))];
      expect(after).toEqual({ tag: before?.tag, words: 'No number.' });
    }
  });

  it('of a text belongs to its field', () => {
    expect(text('x', 'No number.')).toMatch(
      /aria-invalid="true" aria-describedby="f-help f-problem".* id="f-problem">No/,
    );
  });

  it('is seen and not spoken where nothing was typed yet', () => {
    expect(text(' ', 'Wanted.')).toContain('aria-live="off"');
    expect(text('x', 'Wanted.')).not.toContain('aria-live');
    expect(text(' ', 'Wanted.')).toContain('>Wanted.<');
  });

  it('with keeping is told where its place was before', () => {
    expect(regions(shelf()).map(({ words }) => words)).toEqual(['', '']);
    const [refused] = regions(shelf('refused'));
    expect(refused?.words).not.toBe('');
    expect(refused?.tag).toBe(regions(shelf())[0]?.tag);
  });

  it('is seen with the symbols that may be typed, and heard in words', () => {
    const html = render(<Problem>A level is expected, in dBm or W, for example 23 dBm.</Problem>);
    expect(html).toContain(
      '<span aria-hidden="true">A level is expected, in dBm or W, for example 23 dBm.</span>',
    );
    expect(html).toContain(
      '<span class="visually-hidden">A level is expected, in decibel-milliwatts or watts, for example 23 decibel-milliwatts.</span>',
    );
  });

  it('leaves its place empty where a condition does not hold', () => {
    expect(render(<Problem>{false}</Problem>)).toBe('<p class="problem" role="status"></p>');
  });
});

describe('a page of fields', () => {
  it.each([
    [
      'bench',
      () => (
        <EntryForm
          state={demonstration()}
          running={undefined}
          changed={false}
          mayWait={false}
          drawing={0}
          send={nothing}
        />
      ),
    ],
    ['borrowing', () => <Borrow instruments="/bench/instruments/" />],
    ['comparing', () => <Compare />],
  ])('%s has a place for each text that can be typed', (_, page) => {
    const html = render(page());
    const texts = [...html.matchAll(/<(?:input|textarea)\b[^>]*\sid="([^"]+)"[^>]*>/g)].filter(
      ([tag]) => tag.startsWith('<textarea') || tag.includes('type="text"'),
    );
    expect(texts.length).toBeGreaterThan(1);
    const placed = [...html.matchAll(/ role="status"[^>]* id="([^"]+)"/g)].map(([, id]) => id);
    expect(texts.map(([, id = '']) => `${id}-problem`).filter((id) => !placed.includes(id))).toEqual([]);
  });
});
