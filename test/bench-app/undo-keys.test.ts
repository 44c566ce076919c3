import { expect, it } from 'vitest';
import { undoKey } from '../../src/bench/form/undo-keys.ts';

const bare = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

it('Ctrl or Command with Z takes back, with Shift and Z or with Y does again', () => {
  expect(undoKey({ ...bare, key: 'z', ctrlKey: true })).toBe('undo');
  expect(undoKey({ ...bare, key: 'z', metaKey: true })).toBe('undo');
  expect(undoKey({ ...bare, key: 'Z', ctrlKey: true, shiftKey: true })).toBe('redo');
  expect(undoKey({ ...bare, key: 'y', ctrlKey: true })).toBe('redo');
});

it('the letters alone, and other keys with Ctrl, ask for nothing', () => {
  for (const key of ['z', 'y', 'Z']) expect(undoKey({ ...bare, key })).toBeUndefined();
  for (const key of ['a', 'x', 'Enter']) expect(undoKey({ ...bare, key, ctrlKey: true })).toBeUndefined();
  expect(undoKey({ ...bare, key: 'z', ctrlKey: true, altKey: true })).toBeUndefined();
});
