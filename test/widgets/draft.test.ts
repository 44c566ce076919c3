import { expect, test } from 'vitest';
import { afterLeaving, afterReading, NO_DRAFT, typed } from '../../src/widgets/parts/draft.ts';

const right = { ok: true, value: 3 } as const;
const wrong = { ok: false, problem: 'A number was expected.' } as const;

test('a right text stays as typed while the field is edited, and gives way to the value when it is left', () => {
  const read = afterReading(typed(NO_DRAFT, '3,0'), '3,0', right);
  expect(read.text).toBe('3,0');
  expect(afterLeaving(read)).toEqual(NO_DRAFT);
});

test('a field that is left before its text is read keeps the text until it is', () => {
  const left = afterLeaving(typed(NO_DRAFT, '3,0'));
  expect(left.text).toBe('3,0');
  expect(afterReading(left, '3,0', right)).toEqual(NO_DRAFT);
});

test('a field that is left before its text turns out wrong shows the text with what is wrong', () => {
  const read = afterReading(afterLeaving(typed(NO_DRAFT, 'three')), 'three', wrong);
  expect(read).toMatchObject({ text: 'three', problem: wrong.problem });
  expect(afterLeaving(read).text).toBe('three');
});

test('a wrong text stays with its problem until another one is read', () => {
  const read = afterReading(typed(NO_DRAFT, 'three'), 'three', wrong);
  const again = typed(read, '3');
  expect(again.problem).toBe(wrong.problem);
  expect(afterReading(again, '3', right).problem).toBeUndefined();
});

test('who comes back and types on is not counted as having left', () => {
  const back = typed(afterLeaving(typed(NO_DRAFT, '3')), '30');
  expect(afterReading(back, '30', right).text).toBe('30');
});

test('a reading gives another draft each time, so that the field is drawn anew even where its value stays', () => {
  const left = afterLeaving(typed(NO_DRAFT, '3'));
  expect(afterReading(left, '3', right)).not.toBe(NO_DRAFT);
  const read = afterReading(typed(NO_DRAFT, '3'), '3', right);
  expect(afterReading(read, '3', right)).not.toBe(read);
});
