import type { FunctionModel, Model, SumModel } from '../model.ts';
import { rangeError } from '../quantity.ts';
import type { SeededRandom } from '../random.ts';
import { type Columns, columnsOf } from './columns.ts';
import { addScaled } from './rows.ts';
import type { Column } from './tied-columns.ts';

/** Trials at a time: the columns of a dozen inputs then stay in the processor's cache. */
const ROWS = 4096;

/** Model values for the next rows of trials, written to `out`. */
export type Trials = (out: Float64Array) => void;

function addUp(model: SumModel, { columns }: Columns, out: Float64Array): void {
  let constant = model.constant;
  columns.forEach(({ location }, i) => {
    constant += (model.sensitivities[i] as number) * location;
  });
  out.fill(constant);
  columns.forEach(({ z, scale }, i) => {
    addScaled(out, z, (model.sensitivities[i] as number) * scale);
  });
}

function evaluateEach({ f }: FunctionModel, { columns }: Columns, out: Float64Array): void {
  const values = columns.map(({ location }) => location);
  const count = out.length;
  for (let k = 0; k < count; k++) {
    for (let i = 0; i < values.length; i++) {
      const { z, location, scale } = columns[i] as Column;
      values[i] = location + scale * (z[k] as number);
    }
    const y = f(values);
    if (!Number.isFinite(y))
      throw rangeError({ where: 'simulate', wish: 'f must give finite numbers', got: y });
    out[k] = y;
  }
}

/** Rows to draw at a time for a block of so many trials: equal parts, so that little is drawn in vain. */
export function rowsFor(block: number): number {
  return Math.ceil(block / Math.ceil(block / ROWS));
}

/** What makes the next trials of a model that has been checked, `rows` at most at a time. */
export function trialsOf(model: Model, rows: number, random: SeededRandom): Trials {
  const columns = columnsOf(model, rows, random);
  return (out) => {
    columns.draw();
    if (model.kind === 'sum') addUp(model, columns, out);
    else evaluateEach(model, columns, out);
  };
}
