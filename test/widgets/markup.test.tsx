import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { questionOf } from '../../src/questions/index.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { wholeClaimOf } from '../../src/sheet/evaluated-blocks.ts';
import { wholeSumOf } from '../../src/sheet/evaluated-link-sum.ts';
import { wholeRowOf } from '../../src/sheet/evaluated-pads.ts';
import { foundMeanOf } from '../../src/sheet/evaluated-readings.ts';
import { clubReadings } from '../../src/sheet/evening.ts';
import { clubBlocks } from '../../src/sheet/gauge-blocks.ts';
import { halfDecibels } from '../../src/sheet/link-sum.ts';
import { clubRow } from '../../src/sheet/pads-in-a-row.ts';
import { triedOf } from '../../src/sheet/tried.ts';
import { clubTry } from '../../src/sheet/tries.ts';
import BorrowedWidget from '../../src/widgets/borrowed/BorrowedWidget.tsx';
import BudgetWidget from '../../src/widgets/budget/BudgetWidget.tsx';
import Choice from '../../src/widgets/choice/Choice.tsx';
import CopyText from '../../src/widgets/copy-text/CopyText.tsx';
import DcHeat from '../../src/widgets/dc-heat/DcHeat.tsx';
import DetectorWidget from '../../src/widgets/detector/DetectorWidget.tsx';
import EnvelopeWidget from '../../src/widgets/envelope/EnvelopeWidget.tsx';
import FewReadings from '../../src/widgets/few-readings/FewReadings.tsx';
import GaugeBlocks from '../../src/widgets/gauge-blocks/GaugeBlocks.tsx';
import InLineWidget from '../../src/widgets/in-line/InLineWidget.tsx';
import Joined from '../../src/widgets/joined/Joined.tsx';
import LevelWidget from '../../src/widgets/level-diagram/LevelWidget.tsx';
import LinkSum from '../../src/widgets/link-sum/LinkSum.tsx';
import OwnMeter from '../../src/widgets/own-meter/OwnMeter.tsx';
import PadsInARow from '../../src/widgets/pads-in-a-row/PadsInARow.tsx';
import PadsLineWidget from '../../src/widgets/pads-line/PadsLineWidget.tsx';
import { Announcer } from '../../src/widgets/parts/Announcer.tsx';
import { NumberField } from '../../src/widgets/parts/NumberField.tsx';
import { readerOf } from '../../src/widgets/parts/read-amount.ts';
import { SelectField } from '../../src/widgets/parts/SelectField.tsx';
import { Slider } from '../../src/widgets/parts/Slider.tsx';
import { TextField } from '../../src/widgets/parts/TextField.tsx';
import ReadingBandWidget from '../../src/widgets/reading-band/ReadingBandWidget.tsx';
import ScopeWidget from '../../src/widgets/scope/ScopeWidget.tsx';
import SharedCause from '../../src/widgets/shared-cause/SharedCause.tsx';
import SpendWidget from '../../src/widgets/spend/SpendWidget.tsx';
import StatedLimits from '../../src/widgets/stated/StatedLimits.tsx';
import TraceWidget from '../../src/widgets/trace/TraceWidget.tsx';
import Tries from '../../src/widgets/tries/Tries.tsx';
import TwoRules from '../../src/widgets/two-rules/TwoRules.tsx';
import UnitTreeWidget from '../../src/widgets/unit-tree/UnitTreeWidget.tsx';
import VerdictWidget from '../../src/widgets/verdict/VerdictWidget.tsx';
import WhatComesBack from '../../src/widgets/what-comes-back/WhatComesBack.tsx';

const read = readerOf({ kind: 'halfWidthDb', min: 0, max: 3, decimals: 2 });
const nothing = (): void => {};

const widgets: Readonly<Record<string, () => VNode>> = {
  trace: () => <TraceWidget />,
  'level diagram': () => <LevelWidget />,
  'keyed envelope': () => <EnvelopeWidget />,
  'reading band': () => <ReadingBandWidget sheet={clubSheet()} />,
  'two rules': () => <TwoRules />,
  verdict: () => <VerdictWidget />,
  'load warmed twice': () => <DcHeat />,
  'meter in the line': () => <InLineWidget />,
  'pads into a meter': () => <PadsLineWidget />,
  spending: () => <SpendWidget />,
  'borrowed line': () => <BorrowedWidget />,
  'own meter': () => <OwnMeter />,
  'pads end to end': () => <PadsInARow lay="straight" prepared={wholeRowOf(clubRow())} />,
  'pads at right angles': () => <PadsInARow lay="angles" prepared={wholeRowOf(clubRow())} />,
  'stated limits': () => <StatedLimits />,
  budget: () => <BudgetWidget />,
  'meter that joins': () => <Joined />,
  'shared cause': () => <SharedCause />,
  oscilloscope: () => <ScopeWidget />,
  'what comes back': () => <WhatComesBack />,
  'peak detector': () => <DetectorWidget />,
  'gauge blocks': () => <GaugeBlocks prepared={wholeClaimOf(clubBlocks())} />,
  'sum of links': () => <LinkSum prepared={wholeSumOf(halfDecibels(1))} />,
  trials: () => <Tries prepared={triedOf({ ...clubTry(), trials: '1000' })} />,
  'few readings': () => <FewReadings prepared={foundMeanOf(clubReadings())} />,
  'tree of units': () => <UnitTreeWidget />,
  guess: () => <Choice question={questionOf('chain-weakest-rung')} use="guess" />,
  check: () => <Choice question={questionOf('chain-certificate-once')} use="check" />,
  'text to copy': () => (
    <CopyText
      decimalHelp="For this text."
      forms={[
        { name: 'Plain text', text: 'a < b' },
        { name: 'Other', text: 'c' },
      ]}
    />
  ),
  slider: () => (
    <Slider label="Pad" value={0.5} min={0} max={3} step={0.01} valueText="0.5 decibels" onValue={nothing} />
  ),
  'number field': () => <NumberField label="Pad" shown="0.5" unit="dB" read={read} onValue={nothing} />,
  'text field': () => (
    <TextField
      id="f"
      label="Pad"
      value="1,5"
      help="In dB"
      problem="No number"
      note="Read so"
      onText={nothing}
    />
  ),
  'text field of several lines': () => (
    <TextField id="f" label="Readings" value="1" rows={3} onText={nothing} />
  ),
  'select field': () => (
    <SelectField
      id="s"
      label="Shape"
      value="b"
      options={['a', 'b']}
      words={{ a: 'First', b: 'Second' }}
      onChoice={nothing}
    />
  ),
};

const markup = (name: string): string => {
  const make = widgets[name];
  if (make === undefined) throw new Error(`wish a widget, got ${name}`);
  return render(make());
};
const all = (text: string, pattern: RegExp): readonly string[] =>
  [...text.matchAll(pattern)].map(([, group]) => group ?? '');

describe.each(Object.keys(widgets))('%s, as the server writes it', (name) => {
  it('has no id twice, and nothing that points at an id that is missing', () => {
    const text = markup(name);
    const ids = all(text, /\sid="([^"]+)"/g);
    expect(new Set(ids).size).toBe(ids.length);
    const wanted = all(text, /\s(?:for|aria-labelledby|aria-describedby)="([^"]+)"/g).flatMap((value) =>
      value.split(' '),
    );
    expect(wanted.filter((id) => !ids.includes(id))).toEqual([]);
  });

  it('describes its figures in sentences that can be listened to', () => {
    for (const text of all(markup(name), /<desc[^>]*>([^<]*)<\/desc>/g)) {
      expect(text).toMatch(/^[A-Z][\s\S]*\.$/);
      expect(text).not.toMatch(/[=±√ν]|%|\.\.|: ?\.|[.!?] [a-z]/);
    }
  });

  it('gives every control a label', () => {
    const text = markup(name);
    const labelled = all(text, /<label[^>]*\sfor="([^"]+)"/g);
    const around = all(text, /<label[^>]*>\s*(<input[^>]*>)/g);
    const controls = [...text.matchAll(/<(?:input|select|textarea)\b[^>]*>/g)].map(([tag]) => tag);
    const bare = controls.filter((tag) => {
      const id = /\sid="([^"]+)"/.exec(tag)?.[1];
      const named = around.includes(tag) || /\saria-label="[^"]+"/.test(tag);
      return !named && !(id !== undefined && labelled.includes(id));
    });
    expect(controls.length).toBeGreaterThan(0);
    expect(bare).toEqual([]);
  });

  it('asks for no style of its own, and shows no broken number', () => {
    expect(markup(name)).not.toMatch(/\sstyle=|NaN|Infinity|undefined|\[object/);
  });

  it('is the same each time', () => expect(markup(name)).toBe(markup(name)));
});

describe('the reading band without script', () => {
  const text = markup('reading band');

  it('is drawn for wide and for narrow places', () => {
    expect(all(text, /data-frame="([^"]+)"/g)).toEqual(['wide', 'narrow']);
  });

  it('has a row of the table for every rung, with slider, field, band and share', () => {
    const rows = all(text, /<tr>([\s\S]*?)<\/tr>/g).slice(1);
    expect(rows).toHaveLength(clubSheet().links.length);
    for (const row of rows) {
      expect(row).toMatch(/type="range"/);
      expect(row).toMatch(/aria-valuetext="\d[\d.]* decibels"/);
      expect(row).toMatch(/±[\d.]+\u00a0dB/);
      expect(row).toMatch(/[\d.]+\u00a0%/);
    }
  });

  it('keeps its announcer quiet until something changes', () => {
    expect(text).toMatch(/aria-live="polite"><\/p>/);
    expect(render(<Announcer summary="Now" />)).not.toContain('Now');
  });

  it('leaves the answers to a page that gives them itself', () => {
    expect(text).toContain('class="answers"');
    expect(render(<ReadingBandWidget sheet={clubSheet()} answers={false} />)).not.toContain(
      'class="answers"',
    );
  });
});

describe('a method without script', () => {
  it('has its caution, its table of parts with the largest named in words, and why where there is no number', () => {
    const text = markup('oscilloscope');
    expect(text).toMatch(/<strong>Before you key:<\/strong> at 28\.5\u00a0dBm/);
    expect(all(text, /<th scope="row">([^<]*\(largest\))<\/th>/g)).toEqual([
      'Gain of the oscilloscope (largest)',
    ]);
    expect(all(text, /data-label="(Stated|u|Share)"/g)).toHaveLength(3 * 7);
    expect(markup('peak detector')).toMatch(/<dt>\u22120\.70\u00a0dB without the drop<\/dt>/);
  });
});

describe('a choice without script', () => {
  it('has every option, and the answer folded away', () => {
    const text = markup('check');
    expect(all(text, /type="radio"[^>]*value="([^"]+)"/g)).toEqual(['a', 'b', 'c', 'd']);
    expect(text).toMatch(/<details class="answer">/);
    expect(text).not.toMatch(/\schecked/);
  });
});

describe('a text to copy without script', () => {
  it('stands there in its first form, to be selected by hand', () => {
    expect(markup('text to copy')).toMatch(/<textarea[^>]*readonly[^>]*>a &lt; b<\/textarea>/i);
    expect(render(<CopyText forms={[]} decimalHelp="" />)).toMatch(/<textarea[^>]*><\/textarea>/);
  });
});

describe('a field with something wrong', () => {
  it('says so where a screen reader hears it, beside help and note', () => {
    expect(markup('text field')).toMatch(/aria-invalid="true" aria-describedby="f-help f-problem f-note"/);
    expect(markup('text field of several lines')).not.toContain('aria-invalid');
  });
});

describe('typed text', () => {
  it('is read with a comma or a point, with or without its unit', async () => {
    for (const text of ['0.5', '0,5', '0.5 dB', '.5'])
      expect(await read(text), text).toMatchObject({ ok: true, value: 0.5 });
  });

  it('that cannot be taken is answered by a sentence', async () => {
    for (const text of ['', 'much', '-1', '99', 'NaN', '1 W']) {
      const reading = await read(text);
      expect(reading.ok, text).toBe(false);
      expect('problem' in reading && reading.problem, text).toMatch(/^\S.*\.$/s);
    }
  });
});
