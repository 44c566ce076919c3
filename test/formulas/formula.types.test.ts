import { expect, it } from 'vitest';
import { powerRatioToDb } from '#compute';
import { example, type FormulaTopic, letter } from '../../src/formulas/formula.ts';
import { formulaOf } from '../../src/formulas/index.ts';

const sources = [{ of: 'derived' }] as const;
const scope = formulaOf('oscilloscope').example.given;
const heat = letter('P', 'W', 'heat');
const row = { tex: 'P', words: 'A row.', sources, example: example({}, () => 0) };

/** What does not compile is checked by the types run: a directive without an error beneath it is itself an error. */
it('a row may only name functions, letters, units and sources that there are', () => {
  const topic: FormulaTopic = { heatInPad: { ...row, symbols: { power: heat, gain: heat, result: heat } } };
  // @ts-expect-error there is no such parameter
  const letters: FormulaTopic = { heatInPad: { ...row, symbols: { wattage: heat } } };
  // @ts-expect-error there is no such function
  const unknown: FormulaTopic = { heatInPan: { ...row, symbols: {} } };
  // @ts-expect-error there is no such unit
  const unit = letter('P', 'horsepower', 'heat');
  // @ts-expect-error there is no such source
  const source: FormulaTopic = { heatInPad: { ...row, symbols: {}, sources: [{ of: 'hearsay' }] } };
  expect([topic, letters, unknown, source].flatMap((t) => Object.keys(t))).toHaveLength(4);
  expect(unit.unit).toBe('horsepower');
});

it('an example computes its result from the numbers that it shows', () => {
  const shown = example({ powerRatio: 100 }, ({ powerRatio }) => powerRatioToDb(powerRatio));
  expect(shown.given).toEqual({ powerRatio: 100 });
  expect(shown.result()).toBe(20);
});

it('an example says where numbers are missing or have no result, and makes none up', () => {
  const missing = 'example: there must be a number for each of the others, and a result of them';
  const { compute: pooled } = formulaOf('pooledScatter').example;
  expect(() => pooled({ standardDeviation: [0.1, 0.2], degreesOfFreedom: [4] })).toThrow(
    new RangeError(missing),
  );
  const { compute: spread } = formulaOf('student').example;
  expect(() => spread({ scale: 0.1, degreesOfFreedom: 2 })).toThrow(new RangeError(missing));
  expect(() => formulaOf('oscilloscope').example.compute({ ...scope, frequencyHz: 145e6 })).toThrow(
    'estimate: outcome must be in range, got aboveBandwidth',
  );
});
