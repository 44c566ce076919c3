import { halfTurnSine } from '../special/half-turn-sine.ts';
import { ensure, type Words } from './words.ts';
import { fillNormal, type Ziggurat } from './ziggurat.ts';

const TO_UNIT = 2 ** -31;
const HALF_STEP = 2 ** -32;
const ROW = 1024;

/** Uniform between -1 and 1, never either of them; 32 random bits. */
export function fillUniform(out: Float64Array, supply: Words): void {
  for (let k = 0; k < out.length; k++) {
    ensure(supply, 1);
    out[k] = (supply.words[supply.at++] as number) * TO_UNIT + HALF_STEP;
  }
}

/** Sum of two uniform values of half-widths `wide` and `narrow` (JCGM 101, 6.4.4 and 6.4.5). */
export function fillTrapezoid(
  out: Float64Array,
  supply: Words,
  { wide, narrow }: { wide: number; narrow: number },
): void {
  for (let k = 0; k < out.length; k++) {
    ensure(supply, 2);
    const first = (supply.words[supply.at++] as number) * TO_UNIT + HALF_STEP;
    const second = (supply.words[supply.at++] as number) * TO_UNIT + HALF_STEP;
    out[k] = wide * first + narrow * second;
  }
}

/** A uniform value times a half-width uniform from `near` to 2 - near (JCGM 101, 6.4.3.3). */
export function fillCurvilinear(out: Float64Array, supply: Words, near: number): void {
  for (let k = 0; k < out.length; k++) {
    ensure(supply, 2);
    const halfWidth = 1 + (1 - near) * ((supply.words[supply.at++] as number) * TO_UNIT + HALF_STEP);
    out[k] = halfWidth * ((supply.words[supply.at++] as number) * TO_UNIT + HALF_STEP);
  }
}

/** Sine of an angle uniform over half a turn: the U shape (JCGM 101, 6.4.6.3). */
export function fillArcsine(out: Float64Array, supply: Words): void {
  for (let k = 0; k < out.length; k++) {
    ensure(supply, 1);
    out[k] = halfTurnSine((supply.words[supply.at++] as number) * TO_UNIT + HALF_STEP);
  }
}

/** Normal values one by one, made a row at a time. */
interface Normals {
  readonly row: Float64Array;
  at: number;
}

/** Fills with gamma values of shape a >= 1 (G. Marsaglia and W. W. Tsang, ACM Trans. Math. Softw. 26 (2000), 363 to 372). */
function fillGamma(out: Float64Array, supply: Words, { a, table }: { a: number; table: Ziggurat }): void {
  const d = a - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  const normals: Normals = { row: new Float64Array(ROW), at: ROW };
  for (let k = 0; k < out.length; ) {
    if (normals.at === ROW) {
      fillNormal(normals.row, supply, table);
      normals.at = 0;
    }
    const x = normals.row[normals.at++] as number;
    const root = 1 + c * x;
    const v = root * root * root;
    ensure(supply, 1);
    const u = ((supply.words[supply.at++] as number) >>> 0) * (TO_UNIT / 2) + HALF_STEP / 2;
    if (v <= 0) continue;
    const square = x * x;
    if (u < 1 - 0.0331 * square * square || Math.log(u) < square / 2 + d * (1 - v + Math.log(v)))
      out[k++] = d * v;
  }
}

/** Student's t: a normal value over the root of a mean square with its degrees of freedom (JCGM 101, 6.4.9.4). */
export function fillStudent(
  out: Float64Array,
  supply: Words,
  { degreesOfFreedom, table }: { degreesOfFreedom: number; table: Ziggurat },
): void {
  fillNormal(out, supply, table);
  const a = degreesOfFreedom / 2;
  const gamma = new Float64Array(out.length);
  fillGamma(gamma, supply, { a: a < 1 ? a + 1 : a, table });
  for (let k = 0; k < out.length; k++) out[k] = (out[k] as number) * Math.sqrt(a / (gamma[k] as number));
  if (a >= 1) return;
  // Below shape 1 a gamma value is one of shape a + 1 times a uniform to the power 1/a (same source, section 6).
  for (let k = 0; k < out.length; k++) {
    ensure(supply, 1);
    const u = ((supply.words[supply.at++] as number) >>> 0) * (TO_UNIT / 2) + HALF_STEP / 2;
    out[k] = (out[k] as number) * u ** (-0.5 / a);
  }
}
