import { wholeRowOf } from '../sheet/evaluated-pads.ts';
import { clubRow, type PadsInARow, rootOfStated, rowResult, sumOfStated } from '../sheet/pads-in-a-row.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { dbText, numberText, percentText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const size = (db: number): string => dbText('shown', { db, decimals: decimalsFor(db) });
const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
const percent = (value: number, decimals = 0): string => percentText('shown', { percent: value, decimals });
const u = (of: PadsInARow): number => rowResult(of).propagation.standardUncertainty;

/** Three good pads into a rough receiver, as the lesson's figure begins. */
const roughRow = (): PadsInARow => ({ ...clubRow(), padDb: 0.3, meterDb: 1 });

/** The guess that opens the lesson: what would perfect pads buy? */
export function anglesGuess(): Question {
  const row = roughRow();
  const { budget } = rowResult(row).propagation;
  const sum = budget.reduce((total, part) => total + part.standardUncertainty, 0);
  const pads = budget.slice(0, row.count);
  const meter = budget.at(-1)?.standardUncertainty ?? Number.NaN;
  const [pad] = pads;
  const share = pads.reduce((total, part) => total + part.share, 0);
  return {
    id: 'angles-perfect-pads',
    stem: `Three pads bring a standard uncertainty of ${size(pad?.standardUncertainty ?? Number.NaN)} each, a receiver ${size(meter)}, all independent. Somebody pays for perfect pads, never off at all. By how much does the standard uncertainty of the whole shrink?`,
    answer: 'a',
    worked: `Laid at right angles the four lengths come ${size(u(row))} far from the start; the receiver alone is ${size(meter)}. That is ${percent(100 * (1 - meter / u(row)))} less. A short length at a right angle to a long one hardly takes you farther from where you began.`,
    options: [
      {
        id: 'a',
        text: `By ${percent(100 * (1 - meter / u(row)))}.`,
        reply: 'Three parts of four, and so little: the fourth is the long one.',
      },
      {
        id: 'b',
        text: `By ${percent(100 * share)}.`,
        reply: 'That is the pads’ share of the variance, which is the square. The root is still to be taken.',
      },
      {
        id: 'c',
        text: `By ${percent(100 * (1 - meter / sum))}.`,
        reply:
          'So it would be if lengths were laid end to end. Independent deviations rarely all err the same way.',
      },
      {
        id: 'd',
        text: `By ${percent((100 * row.count) / (row.count + 1))}: three parts of four.`,
        reply: 'Parts are not counted but weighed, and by their squares.',
      },
    ],
  };
}

/** Three lengths by hand. */
export function anglesSum(): Question {
  const parts = [0.3, 0.4, 1.2] as const;
  const [first, second, third] = parts;
  return {
    id: 'angles-three-parts',
    stem: `Three independent parts have standard uncertainties of ${parts.map((part) => size(part)).join(', ')}. What have they together?`,
    answer: 'b',
    worked: `${size(first)} and ${size(second)} at a right angle make ${size(Math.hypot(first, second))}; that and ${size(third)}, at a right angle again, make ${size(Math.hypot(...parts))}.`,
    options: [
      {
        id: 'a',
        text: size(first + second + third),
        reply: 'End to end. So they add if they all err alike, by one shared cause. Independent ones do not.',
      },
      { id: 'b', text: size(Math.hypot(...parts)), reply: 'Pythagoras, and then once more.' },
      {
        id: 'c',
        text: size(third),
        reply: 'Nearly: the longest decides. But the others do lengthen it a little.',
      },
      {
        id: 'd',
        text: size(Math.hypot(...parts) / Math.sqrt(parts.length)),
        reply:
          'Divided by the root of their number, as for the mean of three readings. Here a sum is wanted, and nothing is averaged.',
      },
    ],
  };
}

/** A share of the variance. */
export function anglesShare(): Question {
  const [large, small] = [0.2, 0.1] as const;
  const share = large ** 2 / (large ** 2 + small ** 2);
  return {
    id: 'angles-share',
    stem: `Two independent parts have standard uncertainties of ${size(large)} and ${size(small)}. What share of the variance has the larger one?`,
    answer: 'c',
    worked: `Shares are areas of squares: ${numberText('shown', { value: large ** 2, decimals: 2 })} of ${numberText('shown', { value: large ** 2 + small ** 2, decimals: 2 })}, ${percent(100 * share)}. Twice as long is four times the square.`,
    options: [
      {
        id: 'a',
        text: percent(100 * (large / (large + small))),
        reply: 'That is its share of the lengths end to end. Variances are squares.',
      },
      {
        id: 'b',
        text: percent(100 * (large / Math.hypot(large, small))),
        reply: 'That is the length over the result. Such numbers do not add up to all: squares do.',
      },
      { id: 'c', text: percent(100 * share), reply: 'The large square is four times the small one.' },
      { id: 'd', text: percent(50), reply: 'Each part has a share by its size, not by being one of two.' },
    ],
  };
}

/** What the root of squared limits is. */
export function anglesLimits(): Question {
  const row: PadsInARow = { ...clubRow(), meterDb: 0 };
  const whole = wholeRowOf(row);
  const root = rootOfStated(row);
  return {
    id: 'angles-of-limits',
    stem: `Three pads, each ${band(row.padDb)} (limits, nothing else known). Somebody squares the limits, adds, takes the root and writes “${band(root)}”. What is that number?`,
    answer: 'd',
    worked: `Each standard uncertainty is the limit divided by the root of 3, so the root of the squared limits is ${numberText('shown', { value: root / u(row), decimals: 2 })} times the standard uncertainty ${size(u(row))}. Of these sums it holds ${percent(100 * whole.withinRoot, 1)}.`,
    options: [
      {
        id: 'a',
        text: 'The uncertainty with k = 2, about 95 %.',
        reply: `That would be twice ${size(u(row))}, ${band(2 * u(row))}: ${percent(100 * ((2 * u(row)) / root - 1))} wider.`,
      },
      {
        id: 'b',
        text: 'The limit of the sum.',
        reply: `The limit is ${band(sumOfStated(row))}. ${percent(100 * (1 - whole.withinRoot), 1)} of the sums lie beyond the root.`,
      },
      {
        id: 'c',
        text: 'The standard uncertainty of the sum.',
        reply: `That is ${size(u(row))}: the limits have to be divided by the root of 3 first.`,
      },
      {
        id: 'd',
        text: `${numberText('shown', { value: root / u(row), decimals: 2 })} standard uncertainties, which hold about ${percent(100 * whole.withinRoot)} here.`,
        reply: 'A coverage factor that nobody chose. With other shapes it holds another share.',
      },
    ],
  };
}
