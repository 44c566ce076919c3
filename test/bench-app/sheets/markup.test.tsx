import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { demonstrationEntries } from '../../../src/bench/entries/fresh.ts';
import { ElsewhereNotice } from '../../../src/bench/keep/ElsewhereNotice.tsx';
import { KeptLine } from '../../../src/bench/keep/KeptLine.tsx';
import { keepStrings } from '../../../src/bench/keep/strings.ts';
import { SheetRow } from '../../../src/bench/sheets/SheetRow.tsx';
import { sheetStrings } from '../../../src/bench/sheets/strings.ts';
import { demonstration } from '../../../src/bench/state/demonstration.ts';
import { METHODS } from '../../../src/sheet/method.ts';

const NOW = Date.parse('2031-05-04T10:00:00Z');
const nothing = (): void => undefined;
const sheet = (name: string, changed = '2031-05-04T09:00:00.000Z') => ({
  id: 'abc123',
  name,
  created: changed,
  changed,
  revision: 1,
  value: demonstrationEntries(),
});
const row = (one: ReturnType<typeof sheet>): string =>
  render(<SheetRow sheet={one} now={NOW} onDuplicate={nothing} onRemove={nothing} />);

describe('a row of the list', () => {
  it('leads to the bench with that sheet, and says when it was changed and how it was measured', () => {
    const html = row(sheet('Fox'));
    expect(html).toContain('href="../#kept-abc123"');
    expect(html).toContain('2031-05-04, 09:00 UTC');
    expect(html).toContain('1 point');
  });

  it('has buttons that say what they would do to which sheet', () => {
    const html = row(sheet('Fox'));
    for (const action of [sheetStrings.duplicate, sheetStrings.remove])
      expect(html).toContain(`aria-label="${sheetStrings.onlyButton(action, 'Fox')}"`);
  });

  it('shows a hostile name as the text that it is', () => {
    const html = row(sheet('"><img src=x onerror=alert(1)><script>'));
    expect(html).not.toMatch(/<img|<script/);
    expect(html).toContain('&lt;img');
  });

  it('says that a clock is wrong where the change is still to come, and only there', () => {
    expect(row(sheet('Fox'))).not.toContain(sheetStrings.future);
    expect(row(sheet('Fox', '2093-01-01T00:00:00.000Z'))).toContain(sheetStrings.future);
    expect(row(sheet('Fox', 'no time')), 'what is no time stands as it is').toContain('no time');
  });

  it('names every method', () => {
    for (const method of METHODS) {
      const html = row({ ...sheet('Fox'), value: { ...demonstrationEntries(), method } });
      expect(html).not.toContain('undefined');
    }
  });
});

describe('what is told where two tabs have one sheet', () => {
  const choices = {
    takeKept: async () => undefined,
    keepBeside: async () => {},
    keepInstead: async () => {},
  };
  const notice = (problem: 'changed' | 'missing' | 'newer', mine: boolean): string =>
    render(
      <ElsewhereNotice
        told={{ kind: 'elsewhere', problem, mine }}
        keeper={choices}
        send={nothing}
        after={nothing}
      />,
    );

  it('is what happened, whether something here is not kept, and what can be chosen', () => {
    const html = notice('changed', true);
    expect(html).toContain(keepStrings.elsewhere.changed);
    expect(html).toContain(keepStrings.mine);
    for (const choice of Object.values(keepStrings.choices)) expect(html).toContain(choice);
    expect(notice('changed', false)).toContain(keepStrings.notMine);
  });

  it.each(['missing', 'newer'] as const)('offers nothing that cannot be done: %s', (problem) => {
    const html = notice(problem, true);
    expect(html).toContain(keepStrings.elsewhere[problem]);
    expect(html).toContain(keepStrings.choices.beside);
    expect(html).not.toContain(keepStrings.choices.take);
    expect(html).not.toContain(keepStrings.choices.instead);
  });
});

it('the line above the bench is there before anything is fetched, and leads to the list', () => {
  const state = demonstration();
  const html = render(<KeptLine state={state} begun={state.entries} send={nothing} />);
  expect(html).toContain('href="sheets/"');
  expect(html, 'a script that waits for the page sees that it does not listen yet').toMatch(
    /class="[^"]*\blate\b/,
  );
  expect(html).not.toContain('woken');
});
