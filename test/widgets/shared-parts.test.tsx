import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { NumbersTable } from '../../src/widgets/parts/NumbersTable.tsx';
import { pulling } from '../../src/widgets/parts/pulling.ts';
import { UndoButtons } from '../../src/widgets/parts/UndoButtons.tsx';

describe('a table of numbers', () => {
  const rows = [
    { id: 'pad', name: 'Pad', cells: ['1 dB', '2 %'], isLookedAt: true },
    { id: 'coax', name: 'Coax', cells: ['3 dB'] },
  ];
  const html = render(<NumbersTable caption="Parts" columns={['Part', 'Loss', 'Share']} rows={rows} />);

  it('names each row and each column, and says beside each number which column it is', () => {
    expect(html.match(/<th scope="col"/g)).toHaveLength(3);
    expect(html.match(/<th scope="row"/g)).toHaveLength(2);
    expect(html).toContain('<caption>Parts</caption>');
    expect(html).toContain('<td class="number" data-label="Share">2 %</td>');
  });

  it('leaves a cell empty for which there is no text, so that none moves to another column', () => {
    expect(html.match(/<td/g)).toHaveLength(4);
    expect(html).toContain('<td class="number" data-label="Share"></td>');
  });

  it('marks the row that is looked at, and no other', () => {
    expect(html.match(/looked-at/g)).toHaveLength(1);
  });

  it('folds its rows on a narrow screen only where it is told to', () => {
    expect(html).toContain('<table class="rungs">');
    expect(render(<NumbersTable caption="" columns={[]} rows={[]} folds />)).toContain('class="rungs slips"');
  });
});

describe('what a held handle tells', () => {
  it('is that it is held, let go of, or given up', () => {
    const told: string[] = [];
    const { onGrasp, onRelease, onCancel } = pulling(({ type }) => told.push(type));
    onGrasp();
    onRelease();
    onGrasp();
    onCancel();
    expect(told).toEqual(['grasp', 'release', 'grasp', 'cancel']);
  });
});

describe('undo and redo', () => {
  const shown = (past: readonly number[], future: readonly number[], alone = false): string =>
    render(
      <UndoButtons
        state={{ past, future }}
        send={() => {}}
        words={{ undo: 'Undo', redo: 'Redo' }}
        alone={alone}
      />,
    );

  it('can be pressed only where there is something to take back or to do again', () => {
    expect(shown([], []).match(/disabled/g)).toHaveLength(2);
    expect(shown([1], [])).toMatch(/<button type="button" class="plain">Undo<.*disabled[^>]*>Redo</);
    expect(shown([1], [2])).not.toContain('disabled');
  });

  it('are hidden without script where nothing around them is', () => {
    expect(shown([], [], true)).toContain('needs-script');
    expect(shown([], [])).not.toContain('needs-script');
  });
});
