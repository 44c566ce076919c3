import { describe, expect, it } from 'vitest';
import {
  actionId,
  FORM_CONTROLS,
  focusAfter,
  pointButtonId,
  type Shown,
} from '../../src/bench/form/focus-after.ts';
import { controlId, linkPath, pointPath } from '../../src/bench/form/keys.ts';
import { stamped } from '../../src/bench/state/stamped.ts';
import { blankSheet } from '../../src/sheet/blank-sheet.ts';
import { blankLink, blankPoint } from '../../src/sheet/entries.ts';

const shown = (
  links: readonly string[],
  points: readonly string[] = ['point1'],
  point = 'point1',
): Shown => ({
  entries: { ...blankSheet('padsIntoMeter'), links: links.map(blankLink), points: points.map(blankPoint) },
  point,
});
const three = shown(['a', 'b', 'c']);

describe('the focus', () => {
  it('goes to the name of a link that was added or doubled', () => {
    const name = [controlId(linkPath('new', 'label'))];
    expect(focusAfter({ type: 'add', kind: 'pad', label: '' }, three, shown(['a', 'b', 'c', 'new']))).toEqual(
      name,
    );
    expect(
      focusAfter({ type: 'duplicate', id: 'a', label: '' }, three, shown(['a', 'new', 'b', 'c'])),
    ).toEqual(name);
  });

  it('goes to the next link when one is taken out, to the one before at the end, to adding when none is left', () => {
    const remove = (id: string, before: Shown) => focusAfter({ type: 'remove', id }, before, before)[0];
    expect(remove('a', three)).toBe(actionId('b', 'remove'));
    expect(remove('c', three)).toBe(actionId('b', 'remove'));
    expect(remove('a', shown(['a']))).toBe(FORM_CONTROLS.addLink);
  });

  it('stays with a link that is moved, on the button that moves it on as long as there is a way on', () => {
    const up = focusAfter({ type: 'move', id: 'b', to: 0 }, three, shown(['b', 'a', 'c']));
    expect(up).toEqual([actionId('b', 'up'), actionId('b', 'down')]);
    const down = focusAfter({ type: 'move', id: 'b', to: 2 }, three, shown(['a', 'c', 'b']));
    expect(down).toEqual([actionId('b', 'down'), actionId('b', 'up')]);
  });

  it('follows points that come and go', () => {
    const two = shown([], ['point1', 'point2'], 'point2');
    expect(focusAfter({ type: 'addPoint' }, shown([]), two)).toEqual([
      controlId(pointPath('point2', 'label')),
    ]);
    expect(focusAfter({ type: 'removePoint', id: 'point2' }, two, shown([]))[0]).toBe(
      pointButtonId('point1'),
    );
  });

  it('stays where it is while something is typed or chosen', () => {
    expect(focusAfter({ type: 'edit', path: 'title', change: { title: 'x' } }, three, three)).toEqual([]);
    expect(focusAfter({ type: 'showPoint', id: 'point1' }, three, three)).toEqual([]);
  });
});

it('changes that may touch what was agreed are sent with the time, others as they are', () => {
  const at = '2026-11-25T03:12:00.000Z';
  expect(stamped({ type: 'edit', path: 'title', change: {} }, at)).toHaveProperty('at', at);
  expect(stamped({ type: 'undo' }, at)).toEqual({ type: 'undo' });
});

it('every field of a link and of a point has a control of its own', () => {
  expect(controlId(linkPath('pad', 'amount'))).toBe('field-pad-amount');
  expect(controlId(pointPath('point1', 'nominal'))).toBe('field-point1-nominal');
  expect(controlId('title')).toBe('field-title');
});
