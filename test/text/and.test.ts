import { expect, it } from 'vitest';
import { namesAnd } from '../../src/text/and.ts';

it('puts names in a row, with a comma between all but the last two', () => {
  expect(namesAnd([])).toBe('');
  expect(namesAnd(['pad'])).toBe('pad');
  expect(namesAnd(['pad', 'coax'])).toBe('pad and coax');
  expect(namesAnd(['pad', 'coax', 'meter'])).toBe('pad, coax and meter');
});
