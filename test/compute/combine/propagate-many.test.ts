import { describe, expect, test } from 'vitest';
import { propagate } from '../../../src/compute/combine/propagate.ts';
import { propagateMany } from '../../../src/compute/combine/propagate-many.ts';
import { impedance, impedanceInputs, impedanceOutputs, limited, quantity } from './published-models.ts';

describe('several outputs of the same readings (GUM H.2)', () => {
  const { inputs, correlations } = impedanceInputs();
  const many = propagateMany({ inputs, correlations, outputs: impedanceOutputs });

  test('the correlations of the readings are those printed', () => {
    expect(correlations.map(({ r }) => Number(r.toFixed(2)))).toEqual([-0.36, 0.86, -0.65]);
  });

  test('resistance, reactance and impedance have the published values and correlations', () => {
    const [R, X, Z] = many.outputs;
    expect(R?.estimate).toBeCloseTo(127.732, 3);
    expect(X?.estimate).toBeCloseTo(219.847, 3);
    expect(Z?.estimate).toBeCloseTo(254.26, 2);
    expect(R?.standardUncertainty).toBeCloseTo(0.071, 3);
    // Printed 0.295; propagated at full precision it is 0.2956, and 0.2955 from five single values (the other approach).
    expect(X?.standardUncertainty).toBeCloseTo(0.295582, 5);
    expect(Z?.standardUncertainty).toBeCloseTo(0.236, 3);
    expect(many.correlation[0]?.[1]).toBeCloseTo(-0.588, 3);
    expect(many.correlation[0]?.[2]).toBeCloseTo(-0.485, 3);
    expect(many.correlation[1]?.[2]).toBeCloseTo(0.9925, 4);
  });

  test('the other approach, five single values each, agrees in the spread', () => {
    const [, X] = impedanceOutputs.map(({ f }) => {
      const values = impedance.volts.map((v, i) =>
        f([v, (impedance.milliamperes[i] ?? 0) / 1000, impedance.phase[i] ?? 0]),
      );
      const mean = values.reduce((a, b) => a + b, 0) / 5;
      return Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / 20);
    });
    expect(X).toBeCloseTo(0.2955, 4);
    expect(many.outputs[1]?.standardUncertainty).toBeCloseTo(X ?? 0, 3);
  });

  test('without the correlations of the readings the outputs are those of table H.5', () => {
    const without = propagateMany({ inputs, outputs: impedanceOutputs });
    expect(without.outputs.map(({ standardUncertainty }) => Number(standardUncertainty.toFixed(3)))).toEqual([
      0.195, 0.201, 0.204,
    ]);
    expect(without.correlation[0]?.[1]).toBeCloseTo(0.056, 3);
    expect(without.correlation[0]?.[2]).toBeCloseTo(0.527, 3);
    expect(without.correlation[1]?.[2]).toBeCloseTo(0.878, 3);
  });

  test('the matrix is symmetric with ones on its diagonal', () => {
    many.correlation.forEach((row, i) => {
      expect(row[i]).toBe(1);
      row.forEach((r, j) => {
        expect(r).toBe(many.correlation[j]?.[i]);
      });
    });
  });

  test('each output alone is what propagation gives', () => {
    impedanceOutputs.forEach(({ f }, k) => {
      const alone = propagate({ model: { kind: 'function', inputs, f, correlations } });
      expect(many.outputs[k]?.standardUncertainty).toBeCloseTo(alone.standardUncertainty, 12);
    });
  });
});

describe('bare edges', () => {
  test('two outputs of one input are tied fully, and an exact one to nothing', () => {
    const { outputs, correlation } = propagateMany({
      inputs: [quantity('a', 2, 0.1)],
      outputs: [
        { id: 'double', f: ([a = 0]) => 2 * a },
        { id: 'fallen', f: ([a = 0]) => 5 - a },
        { id: 'fixed', f: () => 7 },
      ],
    });
    expect(outputs.map(({ id }) => id)).toEqual(['double', 'fallen', 'fixed']);
    expect(outputs[2]).toEqual({ id: 'fixed', estimate: 7, standardUncertainty: 0 });
    expect(correlation[0]?.[1]).toBe(-1);
    expect(correlation[0]?.[2]).toBe(0);
    expect(correlation[2]?.[2]).toBe(1);
  });

  test('a shared cause ties outputs that share no input', () => {
    const { correlation } = propagateMany({
      inputs: [limited('a', 1, { cause: 'meter' }), limited('b', 1, { cause: 'meter' }), limited('c', 1)],
      outputs: [
        { id: 'first', f: ([a = 0]) => a },
        { id: 'second', f: ([, b = 0, c = 0]) => b + c },
      ],
    });
    expect(correlation[0]?.[1]).toBeCloseTo(Math.SQRT1_2, 9);
  });

  test('a broken model is refused', () => {
    expect(() =>
      propagateMany({ inputs: [limited('a', 1), limited('a', 1)], outputs: impedanceOutputs }),
    ).toThrow('propagateMany: ids of inputs must differ');
  });
});
