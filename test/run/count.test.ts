import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { count, forget, type Kind } from './count.ts';

let place = '';

beforeEach(() => {
  place = mkdtempSync(join(tmpdir(), 'count-'));
  mkdirSync(join(place, '.reports'));
});
afterEach(() => rmSync(place, { recursive: true, force: true }));

const report = (file: string, content: object): void =>
  writeFileSync(join(place, '.reports', file), JSON.stringify(content));
const counted = (kind: Kind, endedWell: boolean) => count(kind, endedWell, place);

describe('a step with one result', () => {
  test('counts once, for or against', () => {
    expect(counted('one', true)).toEqual({ passed: 1, failed: 0 });
    expect(counted('one', false)).toEqual({ passed: 0, failed: 1 });
  });
});

describe('a runner of tests', () => {
  test('that leaves no report has failed, whatever it says', () => {
    for (const kind of ['vitest', 'site', 'playwright'] as const) {
      expect(counted(kind, true)).toEqual({ passed: 0, failed: 1 });
    }
  });

  test('counts skipped tests and tests to do as failed', () => {
    report('unit.json', { numPassedTests: 5, numFailedTests: 1, numPendingTests: 2, numTodoTests: 3 });
    expect(counted('vitest', false)).toEqual({ passed: 5, failed: 6 });
    report('browser.json', { stats: { expected: 4, unexpected: 1, flaky: 1, skipped: 1 } });
    expect(counted('playwright', false)).toEqual({ passed: 4, failed: 3 });
  });

  test('that reports in another form than it did has failed, and is not counted as nothing at all', () => {
    report('unit.json', { numTotalTests: 5 });
    report('site.json', { passed: 12 });
    report('browser.json', { stats: {} });
    expect(counted('vitest', true)).toEqual({ passed: 0, failed: 1 });
    expect(counted('site', true)).toEqual({ passed: 0, failed: 1 });
    expect(counted('playwright', true)).toEqual({ passed: 0, failed: 1 });
  });

  test('that found no test has failed', () => {
    report('unit.json', { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0 });
    expect(counted('vitest', true)).toEqual({ passed: 0, failed: 1 });
  });

  test('that ends badly with no failed test has failed once', () => {
    report('site.json', { passed: 12, failed: 0 });
    expect(counted('site', false)).toEqual({ passed: 12, failed: 1 });
    expect(counted('site', true)).toEqual({ passed: 12, failed: 0 });
  });
});

test('the report of an earlier run is not counted again', () => {
  report('site.json', { passed: 12, failed: 0 });
  forget('site', place);
  expect(counted('site', true)).toEqual({ passed: 0, failed: 1 });
});
