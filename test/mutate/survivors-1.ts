import type { Survivor } from './survivors.ts';

/** Of drawing, selecting, searching and the shapes: see `survivors.ts`. */
export const survivorsOfDrawing: readonly Survivor[] = [
  {
    file: 'src/compute/acceptance.ts',
    within: 'across < best.width',
    to: ['across <= best.width'],
    reason: 'Of two spans as narrow either is as good.',
  },
  {
    file: 'src/compute/acceptance.ts',
    within: 'for (let i = 0; i <= STARTS; i++) attempt',
    to: ['i < STARTS'],
    reason: 'What begins at the last start is reached by the refinement as well.',
  },
  {
    file: 'src/compute/acceptance.ts',
    within: 'let step = free / STARTS; step > free * FINEST',
    to: ['free * STARTS', 'step >= free * FINEST'],
    reason:
      'Steps that lead outside are not taken, and halving makes them as fine; no halving meets the bound exactly.',
  },
  {
    file: 'src/compute/acceptance.ts',
    within: 'tooFar < enough',
    to: ['tooFar <= enough'],
    reason: 'The probability is reached at one and not at the other, so that they differ.',
  },
  {
    file: 'src/compute/acceptance.ts',
    within:
      'const equalTails = { lower: of.quantile((1 - probability) / 2), upper: of.quantile((1 + probability) / 2) };',
    to: ['{}'],
    reason:
      'Without equal tails the narrowest span is searched, which fits wherever they do: only speed differs.',
  },
  {
    file: 'src/compute/acceptance.ts',
    within: 'widthOf(equalTails) <= room',
    to: ['false', 'widthOf(equalTails) < room'],
    reason: 'The narrowest span fits wherever equal tails do: they only spare its search.',
  },
  {
    file: 'src/compute/combine/columns.ts',
    within: 'k < z.length',
    to: ['k <= z.length'],
    reason: 'One number more is drawn and put nowhere: the next are as random.',
  },
  {
    file: 'src/compute/combine/columns.ts',
    within: 'k < rows',
    to: ['k <= rows'],
    reason: 'One number more is drawn and put nowhere: the next are as random.',
  },
  {
    file: 'src/compute/combine/columns.ts',
    within: 'model.correlations ?? []',
    to: ['["Stryker was here"]'],
    reason: "A coefficient without names is no input's.",
  },
  {
    file: 'src/compute/combine/columns.ts',
    within: 'r === 0 ? [] : [a, b]',
    to: ['["Stryker was here"]'],
    reason: 'No input has such a name.',
  },
  {
    file: 'src/compute/combine/columns.ts',
    within: 'normals.length > 0',
    to: ['true', 'normals.length >= 0'],
    reason: 'Without inputs there is nothing to mix or to draw.',
  },
  {
    file: 'src/compute/combine/comonotone-sum.ts',
    within: 'cells[0]?.x ?? 0',
    to: ['cells[0].x'],
    reason: 'A table has cells: the types do not know.',
  },
  {
    file: 'src/compute/combine/comonotone-sum.ts',
    within: 'cells.at(-1)?.x ?? 0',
    to: ['cells.at(-1).x'],
    reason: 'A table has cells: the types do not know.',
  },
  {
    file: 'src/compute/combine/extent.ts',
    within: 'tame.filter(isBounded).map((part) => reachOf(part))',
    to: ['tame'],
    reason: 'How long the period is: it stays below the other bound, and a longer one holds the sum as well.',
  },
  {
    file: 'src/compute/combine/fill.ts',
    within: 'k < count; k++) out[k] = (words[k]',
    to: ['k <= count'],
    reason: 'A value beyond the row is not there to be written.',
  },
  {
    file: 'src/compute/combine/fill.ts',
    within: 'k < count; k++)\n    out[k] =',
    to: ['k <= count'],
    reason: 'A value beyond the row is not there to be written.',
  },
  {
    file: 'src/compute/combine/fill.ts',
    within: 'k < count; k++) {',
    to: ['k <= count'],
    reason: 'A value beyond the row is not there to be written.',
  },
  {
    file: 'src/compute/combine/u-shape.ts',
    within: 'k < count',
    to: ['k <= count'],
    reason: 'A value beyond the row is not there to be written.',
  },
  {
    file: 'src/compute/combine/reference.ts',
    within: '(standard.degreesOfFreedom ?? 0) > 2.5 && standardDeviation !== undefined',
    to: [
      'false',
      'true',
      '(standard.degreesOfFreedom ?? 0) > 2.5 || standardDeviation !== undefined',
      '(standard.degreesOfFreedom ?? 0) >= 2.5',
      '(standard.degreesOfFreedom ?? 0) <= 2.5',
      'standard.degreesOfFreedom && 0',
      'standardDeviation === undefined',
    ],
    reason:
      'Which variance stands in is a choice, and the difference is made up for: shares of sums of two to four t moved by 1e-7 at most when it was tried.',
  },
  {
    file: 'src/compute/combine/reference.ts',
    within: "'coarse'",
    to: ['""'],
    reason: 'Whatever is not `fine` is coarse.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'Math.floor(values.length / PROBES)',
    to: ['values.length * PROBES'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'Math.ceil(values.length / stride)',
    to: ['values.length * stride'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'k < probes.length',
    to: ['false', 'k <= probes.length', 'k >= probes.length'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'probes.sort()',
    to: ['probes'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within:
      '{\n  const lowest = new Float64Array(room);\n  const highest = new Float64Array(room);\n  const total = values.length;\n  let [below, above] = [0, 0];\n  for (let k = 0; k < total; k++) {\n    const value = values[k] as number;\n    if (value > low && value < high) continue;\n    if (value <= low) {\n      if (below === room) return undefined;\n      lowest[below++] = value;\n    }\n    if (value >= high) {\n      if (above === room) return undefined;\n      highest[above++] = value;\n    }\n  }\n  return { lowest: lowest.subarray(0, below), highest: highest.subarray(0, above) };\n}',
    to: ['{}'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'let [below, above] = [0, 0];',
    to: ['[]'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'k < total',
    to: ['false', 'k >= total'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'k < total; k++',
    to: ['k <= total'],
    reason: 'What is not there is no number and belongs to neither tail.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'value > low && value < high',
    to: ['true', 'false', 'value >= low', 'value <= high'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'value <= low',
    to: ['false', 'value < low'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'below === room',
    to: ['true', 'below !== room'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'value >= high',
    to: ['false', 'value > high'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'above === room',
    to: ['true', 'above !== room'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within:
      'Tails | undefined {\n  const probes = probesOf(values);\n  const last = probes.length - 1;\n  const part = count / values.length;\n  const spread = Math.sqrt((part * (1 - part)) / probes.length);\n  const reach = Math.min(last, Math.ceil((part + MARGIN * spread) * probes.length));\n  const far = Math.floor(reach / FAR_OUT);\n  const [low, high] = [probes[reach] as number, probes[last - reach] as number];\n  const gathered = gather(values, { low, high, room: Math.min(values.length, 3 * count + PROBES) });\n  if (gathered === undefined) return undefined;\n  const { lowest, highest } = gathered;\n  if (lowest.length < count || highest.length < count) return undefined;\n  return {\n    lowest: spreadSorted(lowest, { from: probes[far] as number, to: low }).subarray(0, count),\n    highest: spreadSorted(highest, { from: high, to: probes[last - far] as number }).subarray(-count),\n  };\n}',
    to: ['{}'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'probes.length - 1',
    to: ['probes.length + 1'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'const part = count / values.length;',
    to: ['count * values.length'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: '(part * (1 - part)) / probes.length',
    to: ['part * (1 - part) * probes.length', 'part / (1 - part)', '1 + part'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'Math.min(last, Math.ceil((part + MARGIN * spread) * probes.length))',
    to: [
      'Math.max(last, Math.ceil((part + MARGIN * spread) * probes.length))',
      '(part + MARGIN * spread) / probes.length',
      'part - MARGIN * spread',
      'MARGIN / spread',
    ],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'reach / FAR_OUT',
    to: ['reach * FAR_OUT'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: '[probes[reach] as number, probes[last - reach] as number]',
    to: ['[]'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: '{ low, high, room: Math.min(values.length, 3 * count + PROBES) }',
    to: ['Math.max(values.length, 3 * count + PROBES)', '3 / count'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'gathered === undefined',
    to: ['true'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'lowest.length < count || highest.length < count',
    to: ['true', 'lowest.length <= count', 'highest.length <= count'],
    reason:
      'Wherever the tails are guessed to begin, they come out right or all values are sorted: only speed differs.',
  },
  {
    file: 'src/compute/combine/selection.ts',
    within: 'if (tails) return tails;',
    to: ['false'],
    reason: 'Sorting all values gives the same tails: only speed differs.',
  },
  {
    file: 'src/compute/combine/shortest.ts',
    within: 'Math.max(...ends)',
    to: ['Math.min(...ends)'],
    reason:
      'The search makes both ends equally high, and an end at a limit is left out: the larger is the smaller.',
  },
  {
    file: 'src/compute/combine/shortest.ts',
    within: 'x < lower - spacing || x > upper + spacing',
    to: ['x <= lower - spacing', 'x >= upper + spacing'],
    reason: 'Equality is a point of measure zero.',
  },
  {
    file: 'src/compute/combine/shortest.ts',
    within: 'height > level * (1 + SLACK)',
    to: ['height >= level * (1 + SLACK)'],
    reason: 'Equality is a point of measure zero.',
  },
  {
    file: 'src/compute/combine/simulate.ts',
    within: 'blocks.length === 1',
    to: ['false'],
    reason: 'One block is all values that are kept, and their intervals are found once more.',
  },
  {
    file: 'src/compute/combine/source.ts',
    within: 'bells.set(degreesOfFreedom, known);',
    to: [';'],
    reason: 'The same layers are made once more: only speed differs.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: '(top - 1) / thick',
    to: ['(top - 1) * thick'],
    reason: 'Only where the excess is 0 counts: its size steers the search alone.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: 'CLOSE * least',
    to: ['CLOSE / least'],
    reason: 'Tails begin beyond 1, so that the search is only closer.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: 'top < 1 &&',
    to: ['top <= 1'],
    reason: 'Equality is a point of measure zero.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: '(HALF * (edge[k + 1] as number)) / (edge[k] as number) - 0.5',
    to: ['HALF * (edge[k + 1] as number) / (edge[k] as number) + 0.5'],
    reason: 'One word more of 2^31 is taken without a look, and lies under the curve as well.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: '(word ^ (word >> 31)) < inside',
    to: ['(word ^ word >> 31) <= inside'],
    reason: 'One word more of 2^31 is taken without a look, and lies under the curve as well.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: '(nextWord(supply) >>> 0) + 0.5',
    to: ['(nextWord(supply) >>> 0) - 0.5'],
    reason:
      'A step of 2^-32: the one word that then has no logarithm fails the comparison and is drawn anew.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: 'Math.log(uniform(supply)) < bell.logHeight(x) - start + a * logRatio',
    to: ['Math.log(uniform(supply)) <= bell.logHeight(x) - start + a * logRatio'],
    reason: 'Equality is a point of measure zero.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: 'x < 0 ? -fromTail(ziggurat, supply) : fromTail(ziggurat, supply)',
    to: ['x <= 0', 'x >= 0'],
    reason: 'No word gives 0, and either half of the words may take either side.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: 'low + uniform(supply) * (high - low) < Math.exp(bell.logHeight(x))',
    to: ['low + uniform(supply) * (high - low) <= Math.exp(bell.logHeight(x))'],
    reason: 'Equality is a point of measure zero.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: 'Math.ceil(count / 4)',
    to: ['count * 4'],
    reason: 'More words are drawn than are used.',
  },
  {
    file: 'src/compute/combine/ziggurat.ts',
    within: 'k < count; k++',
    to: ['k <= count'],
    reason: 'A value beyond the row is not there to be written.',
  },
  {
    file: 'src/compute/component.ts',
    within: "statement.form === 'readings'",
    to: ['false', '""'],
    reason: 'Readings bring finite degrees of freedom, which the other half of the condition sees.',
  },
  {
    file: 'src/compute/distribution/standard.ts',
    within: 'if (Math.abs(z) >= standard.limit) return z > 0 ? 1 : 0;',
    to: ['Math.abs(z) > standard.limit', 'z >= 0'],
    reason: "At the limit itself the shape's own share is 0 as well; 0 is no limit.",
  },
  {
    file: 'src/compute/distribution/standard.ts',
    within: 'return z > 0 ? 1 - standard.lowerShare(-z) : standard.lowerShare(z);',
    to: ['z >= 0'],
    reason: 'In the middle both are one half.',
  },
  {
    file: 'src/compute/distribution/standard.ts',
    within: 'share > 0.5',
    to: ['share >= 0.5'],
    reason: 'In the middle both are 0.',
  },
  {
    file: 'src/compute/distribution/student.ts',
    within: 'w <= 1',
    to: ['w < 1'],
    reason: 'A point exactly on the circle has probability zero.',
  },
  {
    file: 'src/compute/distribution/trapezoid-shape.ts',
    within: 'share >= rampShare',
    to: ['share > rampShare'],
    reason: 'Both pieces of the curve meet there.',
  },
  {
    file: 'src/compute/fit.ts',
    within: 'x === points[0]?.x',
    to: ['points[0].x'],
    reason: 'Three points at least were asked for before: the types do not know.',
  },
  {
    file: 'src/compute/fit.ts',
    within: 'got: points[0]?.x',
    to: ['points[0].x'],
    reason: 'Three points at least were asked for before: the types do not know.',
  },
  {
    file: 'src/compute/fit.ts',
    within: "notNegative('readLine'",
    to: ['""'],
    reason: 'The variance is not negative: it is cut at zero in the same line.',
  },
  {
    file: 'src/compute/prefix.ts',
    within: 'model.correlations ?? []',
    to: ['["Stryker was here"]'],
    reason: 'A coefficient without names lies within no inputs.',
  },
  {
    file: 'src/compute/rounding.ts',
    within: `\`\${'0'.repeat(-keep)}\${digits}\``,
    to: ['``'],
    reason: 'With a zero in front the rest is below a tenth and raises no digit, and neither does no rest.',
  },
  {
    file: 'src/compute/special/gamma-share.ts',
    within: 'if (d === 0) d = TINY;',
    to: ['false'],
    reason: 'A guard against a division that no argument in use brings about.',
  },
  {
    file: 'src/compute/special/integrate.ts',
    within:
      '2 * count + 1 }, (_, k) => {\n    const t = (k - count) * step;\n    const s = (Math.PI / 2) * Math.sinh(t);\n    return {\n      u:',
    to: ['2 * count - 1'],
    reason: 'The last two nodes weigh less than 1e-50 together.',
  },
  {
    file: 'src/compute/special/integrate.ts',
    within:
      '2 * count + 1 }, (_, k) => {\n    const t = (k - count) * step;\n    const s = (Math.PI / 2) * Math.sinh(t);\n    return { x:',
    to: ['2 * count - 1'],
    reason: 'The last two nodes lie beyond 1e28 widths, where no density in use is left.',
  },
  {
    file: 'src/compute/special/normal.ts',
    within: 'Math.abs(q) <= 0.425',
    to: ['Math.abs(q) < 0.425'],
    reason: 'Both fits agree at the border to the last bits.',
  },
  {
    file: 'src/compute/special/normal.ts',
    within: 'q < 0 ? share : 1 - share',
    to: ['q <= 0'],
    reason: 'The middle has been returned in the line before.',
  },
  {
    file: 'src/compute/special/normal.ts',
    within: 'r <= 5',
    to: ['r < 5'],
    reason: 'Both fits agree at the border to the last bits.',
  },
  {
    file: 'src/compute/special/normal.ts',
    within: 'q < 0 ? -z : z',
    to: ['q <= 0'],
    reason: 'The middle has been returned above.',
  },
  {
    file: 'src/compute/special/solve.ts',
    within: 'let lastStep = high - low;',
    to: ['high + low'],
    reason: 'How far the first step may lead: halving or not, the search closes in upon the same place.',
  },
  {
    file: 'src/compute/special/solve.ts',
    within: 'step < MOST_STEPS; step++',
    to: ['step <= MOST_STEPS', 'step--'],
    reason: 'The bound on the steps is met by no function that has a place to find.',
  },
  {
    file: 'src/compute/special/solve.ts',
    within: 'if (value < wanted) low = x;',
    to: ['value <= wanted'],
    reason: 'What is wanted has been returned in the line before.',
  },
  {
    file: 'src/compute/special/solve.ts',
    within: 'Math.abs(newton - x) < 0.5 * lastStep',
    to: ['Math.abs(newton - x) <= 0.5 * lastStep'],
    reason: 'From a step of exactly half the last one both ways lead on to the same place.',
  },
  {
    file: 'src/compute/special/solve.ts',
    within: 'Math.abs(next - x) <= Math.max(tolerance, 2 ** -52 * Math.abs(x))',
    to: ['Math.abs(next - x) < Math.max(tolerance, 2 ** -52 * Math.abs(x))'],
    reason: 'A step of exactly the tolerance is a point of measure zero, or another look at the same place.',
  },
  {
    file: 'src/compute/special/solve.ts',
    within: 'next === low || next === high',
    to: ['false', 'next === low && next === high'],
    reason: 'One look more at an end of the bracket leads nowhere else, and ends the search too.',
  },
  {
    file: 'src/compute/special/student-characteristic.ts',
    within: 'logGamma(m) - Math.log(step)',
    to: ['logGamma(m) + Math.log(step)'],
    reason: 'More nodes are kept, of shares below the least; the shares are made to sum to 1 either way.',
  },
  {
    file: 'src/compute/special/student-characteristic.ts',
    within: 'weightAt(u + step) > least',
    to: ['weightAt(u + step) >= least'],
    reason: 'Equality is a point of measure zero.',
  },
  {
    file: 'src/compute/special/student-characteristic.ts',
    within: 'weightAt(u) > least;',
    to: ['weightAt(u) >= least'],
    reason: 'Equality is a point of measure zero.',
  },
];
