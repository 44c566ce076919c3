import { all, create, type Unit } from 'mathjs';
import { numbersOf, type Read, type Side, type Statement, statementsOf } from './read-line.ts';

const math = create(all ?? {});
math.createUnit('decibelstep');
math.import({ bell: (z: number): number => (1 + math.erf(z / Math.SQRT2)) / 2 });

/** Numbers of formulas, which come from no question; those with words stand only where the words do. */
const CONSTANTS: readonly (readonly [value: number, words: RegExp])[] = [
  ...[1, 2, 3, 4, 8, 10, 20, 100].map((value) => [value, /(?:)/] as const),
  [2.15, /dipole/],
  [22, /PARIS/],
  [50, /PARIS/],
];

/** A number that a line may use: from the question or proved before, and whether it was rounded on the way. */
interface Known {
  readonly number: Read;
  readonly isExact: boolean;
}

const isLevel = (unit: string): boolean => /^dB[mid]?$/.test(unit);
const plainUnit = (unit: string): string =>
  unit
    .replace(/ RMS| peak|pp$/, '')
    .replace('Ω', 'ohm')
    .replace('µ', 'u')
    .replace('°C', 'K');

/** A number for mathjs, in its unit. */
function valued({ value, unit }: Read): string {
  if (unit === '') return `(${value})`;
  if (unit === '%') return `(${value}/100)`;
  if (unit === 'ppm') return `(${value}/1000000)`;
  return `(${value} ${isLevel(unit) ? 'decibelstep' : plainUnit(unit)})`;
}
const unitless = ({ value }: Read): string => `(${value})`;
/** One for a level, nought for a difference of levels: their sum has to be a level or a difference again. */
function counted({ value, unit }: Read): string {
  if (unit === 'dBm') return '1';
  return isLevel(unit) ? '0' : `(${value})`;
}

/** A side as an expression; a plus-minus becomes the sign that is asked for. */
function expression(side: Side, write: (number: Read) => string, sign: string): string {
  let [text, close] = ['', ''];
  for (const piece of side) {
    const isOperand = piece.as !== 'sign' || /^(?:pi|sqrt|log10|\()$/.test(piece.text);
    if (isOperand && /(?:\)|pi)$/.test(text)) text += '*';
    if (piece.as === 'number') text += write(piece);
    else if (piece.as === 'rest') [text, close] = [`${text}${piece.text}(`, `${close})`];
    else text += piece.text === '±' ? sign : piece.text;
  }
  return `${text}${close}`;
}

const evaluated = (text: string): number | Unit => math.evaluate(text) as number | Unit;
const unitsIn = (side: Side): readonly string[] =>
  side.flatMap((piece) => (piece.as === 'number' && piece.unit !== '' ? [piece.unit] : []));

/** What a side comes to in a unit of power, where it is a level and nothing else. */
function levelAsPower(side: Side, unit: string): number | undefined {
  const [first] = side;
  if (side.length !== 1 || first?.as !== 'number' || first.unit !== 'dBm' || !unit.endsWith('W'))
    return undefined;
  return (math.evaluate(`10^(${first.value}/10) mW`) as Unit).toNumber(plainUnit(unit));
}

/** A number without a unit in a unit that may be given to it. */
function withoutUnit(value: number, unit: string): number {
  if (unit === '%') return 100 * value;
  if (unit === '' || isLevel(unit)) return value;
  throw new TypeError(`${unit} cannot come of a number without a unit`);
}

/** What a side comes to in a unit. @throws TypeError where units do not fit. */
function inUnit(side: Side, unit: string, sign: string): number {
  const fromLevel = levelAsPower(side, unit);
  if (fromLevel !== undefined) return fromLevel;
  if (unitsIn(side).length === 0) {
    const value = Number(evaluated(expression(side, unitless, sign)));
    return unit === '%' ? 100 * value : value;
  }
  const found = evaluated(expression(side, valued, sign));
  if (typeof found === 'number') return withoutUnit(found, unit);
  if (found.dimensions.every((power) => Math.abs(power) < 1e-12))
    return withoutUnit(Number(found.value), unit);
  if (!isLevel(unit)) return found.toNumber(plainUnit(unit));
  if (unit === 'dBm' && found.equalBase(math.unit('W'))) return 10 * Math.log10(found.toNumber('mW'));
  const levels = Number(evaluated(expression(side, counted, sign)));
  if (unitsIn(side).includes('dBm') && Math.abs(levels - Number(unit === 'dBm')) > 1e-9)
    throw new TypeError(`${levels} levels make no ${unit}`);
  return found.toNumber('decibelstep');
}

const sameSize = (one: number, other: number): boolean =>
  Math.abs(Math.abs(one) - Math.abs(other)) <= 1e-9 * Math.abs(other);
/** A number in the unit without its prefix, so that 500 mW and 0.5 W are one number. */
function size(number: Read): number {
  if (number.unit === '' || isLevel(number.unit)) return number.value;
  const found = evaluated(valued(number));
  return typeof found === 'number' ? found : Number(found.value);
}

/** Where a number comes from; undefined: from nowhere. */
function originOf(number: Read, line: string, known: readonly Known[]): Known | undefined {
  const same = known.filter(
    (each) => sameSize(each.number.value, number.value) || sameSize(size(each.number), size(number)),
  );
  const found = same.find(({ isExact }) => isExact) ?? same[0];
  if (found !== undefined) return found;
  const isConstant = CONSTANTS.some(
    ([value, words]) =>
      value === Math.abs(number.value) && words.test(line) && (number.unit === '' || value < 3),
  );
  return isConstant ? { number, isExact: true } : undefined;
}

/** The printed results of a right side: one, or two for the ends of a band, which have one unit. */
function resultsOf(right: Side): readonly Read[] {
  const numbers = right.filter((piece) => piece.as === 'number');
  const unit = numbers.at(-1)?.unit ?? '';
  return numbers.map((number) => ({ ...number, unit: number.unit === '' ? unit : number.unit }));
}

/** Whether a side is one number, or the two ends of a band, rather than a sum. */
const isResult = (side: Side): boolean =>
  /^[±+*]?n$|^1\/n$|^\+?n\/\+?n$/.test(
    side.map((piece) => (piece.as === 'number' ? 'n' : piece.text)).join(''),
  );

/** What is wrong with a statement; empty where it holds. `slack` is what rounding may do, in units of the last place. */
function faultOf({ left, right }: Statement, slack: number): string {
  if (!isResult(right)) {
    const unit = unitsIn(left)[0] ?? unitsIn(right)[0] ?? '';
    const [one = 0, other = 1] = [left, right].map((side) => inUnit(side, unit, '+'));
    return sameSize(one, other) ? '' : `${one} is not ${other}`;
  }
  for (const [at, { value, place, unit }] of resultsOf(right).entries()) {
    const found = inUnit(left, unit, at === 0 ? '+' : '-');
    if (!(Math.abs(found - value) <= slack * place + 1e-9 * Math.abs(value)))
      return `${found} is not ${value} ${unit}`;
  }
  return '';
}

/** What became of one solution: how many statements hold, and what is wrong, in words. */
export interface Proof {
  readonly proved: number;
  readonly faults: readonly string[];
}

/** Half of the last place is rounding; a whole one where rounded numbers went in. Nothing is lost where it is exact. */
const [EXACT, ROUNDED, INEXACT] = [1e-9, 0.5001, 1.0001];

/** What one statement adds to what is known, or what is wrong with it; neither where its numbers are known to nobody. */
function proved(
  statement: Statement,
  line: string,
  known: readonly Known[],
): { readonly found: readonly Known[] } | { readonly fault: string } | undefined {
  const { left, right } = statement;
  const origins = left.flatMap((piece) => (piece.as === 'number' ? [originOf(piece, line, known)] : []));
  if (origins.includes(undefined)) return undefined;
  const isSafe = origins.every((origin) => origin?.isExact);
  try {
    const fault = faultOf(statement, isSafe ? ROUNDED : INEXACT);
    if (fault !== '') return { fault };
    const isExact = isSafe && faultOf(statement, EXACT) === '';
    const exponents = right.flatMap((piece) =>
      piece.as === 'sign' && piece.text.startsWith('^') ? [Number(piece.text.slice(2, -1))] : [],
    );
    const own = [
      ...resultsOf(right),
      ...exponents.map((value): Read => ({ as: 'number', value, place: 1, unit: '' })),
    ];
    return { found: own.map((number) => ({ number, isExact })) };
  } catch (error) {
    return { fault: error instanceof Error ? error.message : String(error) };
  }
}

/** Goes through the lines of a solution as somebody with a pocket calculator would, who knows only what the question says. */
export function proofOf(question: string, lines: readonly string[]): Proof {
  const known: Known[] = numbersOf(question).map((number) => ({ number, isExact: true }));
  const faults: string[] = [];
  let count = 0;
  for (const line of lines) {
    for (const statement of statementsOf(line)) {
      const outcome = proved(statement, line, known);
      if (outcome === undefined) continue; // told below
      if ('fault' in outcome) faults.push(`${line} (${outcome.fault})`);
      else {
        known.push(...outcome.found);
        count++;
      }
    }
    const strange = numbersOf(line).filter((number) => originOf(number, line, known) === undefined);
    faults.push(...strange.map(({ value, unit }) => `${line} (where does ${value} ${unit} come from?)`));
  }
  return { proved: count, faults };
}
