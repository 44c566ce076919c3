import fc from 'fast-check';
import type { BenchAction } from '../../src/bench/state/actions.ts';
import { CHECK_KEYS } from '../../src/sheet/check-keys.ts';
import { METHODS } from '../../src/sheet/method.ts';
import { LINK_KINDS } from '../../src/sheet/sheet.ts';
import { anyEntries } from './any-entries.ts';

const typedText = fc.constantFrom('', '7', '7.1 dBm', '8', '28', '1,5', 'x', '0.4', '7\n7.2');
const anyLink = fc.constantFrom('national', 'meter', 'pad', 'coax', 'link7', 'link8', 'nobody');
const anyPoint = fc.constantFrom('point1', 'point2', 'point3', 'nobody');
const time = fc.constantFrom('2026-05-09T10:00:00Z', '2026-05-09T10:05:00Z');

/** Typing: what follows on the same path is one step. */
export const anyTyping: fc.Arbitrary<BenchAction> = fc.oneof(
  fc
    .tuple(fc.constantFrom('title', 'plane', 'multiplier', 'damage', 'remarks'), typedText, time)
    .map(([key, text, at]) => ({ type: 'edit', path: key, change: { [key]: text }, at }) as const),
  fc
    .tuple(anyPoint, fc.constantFrom('readings', 'nominal', 'tolerance', 'label'), typedText, time)
    .map(
      ([id, key, text, at]) =>
        ({ type: 'editPoint', id, path: `${id}.${key}`, change: { [key]: text }, at }) as const,
    ),
  fc
    .tuple(anyLink, fc.constantFrom('amount', 'loss', 'label'), typedText)
    .map(
      ([id, key, text]) => ({ type: 'editLink', id, path: `${id}.${key}`, change: { [key]: text } }) as const,
    ),
  fc
    .tuple(fc.constantFrom(...CHECK_KEYS), typedText)
    .map(([key, text]) => ({ type: 'editCheck', key, text }) as const),
);

/** Changes of one click. */
const anyClick: fc.Arbitrary<BenchAction> = fc.oneof(
  fc
    .constantFrom('simple' as const, 'guardBand' as const, 'probability' as const)
    .map((rule) => ({ type: 'edit', path: 'rule', change: { rule }, at: '2026-05-09T10:10:00Z' }) as const),
  fc
    .tuple(fc.integer({ min: -1, max: 3 }), typedText)
    .map(([index, reason]) => ({ type: 'giveReason', index, reason }) as const),
  fc.constantFrom(...METHODS).map((method) => ({ type: 'chooseMethod', method }) as const),
  fc.constant({ type: 'addPoint' } as const),
  anyPoint.map((id) => ({ type: 'removePoint', id }) as const),
  anyPoint.map((id) => ({ type: 'showPoint', id }) as const),
  fc.constantFrom(...LINK_KINDS).map((kind) => ({ type: 'add', kind, label: kind }) as const),
  anyLink.map((id) => ({ type: 'duplicate', id, label: 'twin' }) as const),
  anyLink.map((id) => ({ type: 'remove', id }) as const),
  fc.tuple(anyLink, fc.integer({ min: -1, max: 9 })).map(([id, to]) => ({ type: 'move', id, to }) as const),
);

/** Whole sheets that come and go. */
const anySheet: fc.Arbitrary<BenchAction> = fc.oneof(
  anyEntries.map((entries) => ({ type: 'open', entries, problems: ['damaged'] }) as const),
  fc.constantFrom(...METHODS).map((method) => ({ type: 'fresh', method }) as const),
  fc.constantFrom<BenchAction>({ type: 'demonstration' }, { type: 'refuse', problems: ['later'] }),
);

/** A drag and its end, in any order. */
const anyDrag: fc.Arbitrary<BenchAction> = fc.oneof(
  fc.tuple(anyLink, fc.double()).map(([id, expandedDb]) => ({ type: 'pull', id, expandedDb }) as const),
  fc.constantFrom<BenchAction>(
    { type: 'grasp' },
    { type: 'release' },
    { type: 'cancel' },
    { type: 'show', what: 'curve', on: true },
  ),
);

export const undo: BenchAction = { type: 'undo' };
export const redo: BenchAction = { type: 'redo' };

/** Every action but undo and redo. */
export const anyForward: fc.Arbitrary<BenchAction> = fc.oneof(
  { weight: 4, arbitrary: anyTyping },
  { weight: 3, arbitrary: anyClick },
  { weight: 1, arbitrary: anySheet },
  { weight: 1, arbitrary: anyDrag },
);

/** Every action. */
export const anyAction: fc.Arbitrary<BenchAction> = fc.oneof(
  { weight: 4, arbitrary: anyForward },
  { weight: 1, arbitrary: fc.constantFrom(undo, redo) },
);
