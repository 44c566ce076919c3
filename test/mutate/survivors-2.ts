import type { Survivor } from './survivors.ts';

/** Further ones: in sorting, the whole distribution, second-order terms and special functions. */
export const furtherSurvivors: readonly Survivor[] = [
  {
    file: 'src/compute/combine/derivative.ts',
    within: 'Math.abs((next[i] ?? 0) - (row[i - 1] ?? 0)) >= WORSENING * best.errorBound',
    to: ['Math.abs((next[i] ?? 0) - (row[i - 1] ?? 0)) > WORSENING * best.errorBound'],
    reason:
      'Both are equal only where both are 0: then the derivative found is exact, and further steps can but find it again.',
  },
  {
    file: 'src/compute/combine/fourier.ts',
    within: 'k < quarter',
    to: ['k <= quarter'],
    reason: 'At the quarter itself stands the 1 that is set below, and its other places lie beyond the rows.',
  },
  {
    file: 'src/compute/combine/fourier.ts',
    within: 'if (k > 0) {',
    to: ['true', 'k >= 0'],
    reason:
      'The first cosine of the next quarter is 0 either way, and the sine at half a turn lies beyond the row.',
  },
  {
    file: 'src/compute/combine/fourier.ts',
    within: 'i = 1, j = 0; i < size',
    to: ['i <= size'],
    reason: 'One step further the reversed index is 0 again, and nothing is swapped.',
  },
  {
    file: 'src/compute/combine/fourier.ts',
    within: 'if (i >= j) continue;',
    to: ['i > j', 'i < j'],
    reason:
      'Each pair is swapped once, from its lower or its higher index; swapping an entry with itself changes nothing.',
  },
  {
    file: 'src/compute/combine/fourier.ts',
    within: 'start < size',
    to: ['start <= size'],
    reason: 'Beyond the end of a row nothing is written.',
  },
  {
    file: 'src/compute/combine/propagate-many.ts',
    within: 'factor[i]?.[k] ?? 0',
    to: ['factor[i][k]'],
    reason: 'Every row of the matrix is there.',
  },
  {
    file: 'src/compute/combine/propagate-many.ts',
    within: 'rows[j]?.[k] ?? 0',
    to: ['rows[j][k]'],
    reason: 'Every row of the matrix is there.',
  },
  {
    file: 'src/compute/combine/rows.ts',
    within: 'k < count; k++) row[k] = (row[k] as number) + factor',
    to: ['k <= count'],
    reason: 'Beyond the end of a row nothing is written.',
  },
  {
    file: 'src/compute/combine/rows.ts',
    within: 'k < count; k++) row[k] = factor',
    to: ['k <= count'],
    reason: 'Beyond the end of a row nothing is written.',
  },
  {
    file: 'src/compute/combine/second-order.ts',
    within: 'sum + (factor[i]?.[k] ?? 0) * step',
    to: ['sum - (factor[i]?.[k] ?? 0) * step'],
    reason:
      'All steps turn about together: first and third derivatives change their sign and count as a product, second ones keep theirs.',
  },
  {
    file: 'src/compute/combine/second-order.ts',
    within: 'factor[i]?.[k]',
    to: ['factor[i][k]'],
    reason: 'Every row of the matrix is there.',
  },
  {
    file: 'src/compute/combine/second-order.ts',
    within: 'centre + (uncertainties[i] ?? 0) * along',
    to: ['centre - (uncertainties[i] ?? 0) * along'],
    reason:
      'All steps turn about together: first and third derivatives change their sign and count as a product, second ones keep theirs.',
  },
  {
    file: 'src/compute/combine/second-order.ts',
    within: '{ length: n }',
    to: ['{}'],
    reason: 'A place that is not set adds nothing to the sums, as a step of 0 does.',
  },
  {
    file: 'src/compute/combine/second-order.ts',
    within: '(z[i] ?? 0) + step',
    to: ['(z[i] ?? 0) - step'],
    reason:
      'All steps turn about together: first and third derivatives change their sign and count as a product, second ones keep theirs.',
  },
  {
    file: 'src/compute/combine/second-order.ts',
    within: 'i < n; i++',
    to: ['i <= n'],
    reason: 'An input beyond the last moves nothing: its differences are 0.',
  },
  {
    file: 'src/compute/combine/second-order.ts',
    within: 'j < n; j++',
    to: ['j <= n'],
    reason: 'An input beyond the last moves nothing: its differences are 0.',
  },
  {
    file: 'src/compute/combine/spectrum.ts',
    within: 'part.limits.upper - part.limits.lower',
    to: ['part.limits.upper + part.limits.lower'],
    reason: 'Of two ends the sum is finite where the difference is.',
  },
  {
    file: 'src/compute/combine/spectrum.ts',
    within: 'boundAt(parts, (2 * Math.PI * size) / (CELLS_PER_FREQUENCY * period)) > FADED',
    to: ['boundAt(parts, 2 * Math.PI * size / (CELLS_PER_FREQUENCY * period)) >= FADED'],
    reason: 'Equality is a point of measure zero.',
  },
  {
    file: 'src/compute/combine/spectrum.ts',
    within: 'period / size > spread / FINENESS',
    to: ['period / size >= spread / FINENESS'],
    reason: 'Equality is a point of measure zero.',
  },
  {
    file: 'src/compute/combine/spectrum.ts',
    within: '{ re: 1, im: 0 }',
    to: ['{}'],
    reason: 'Both are set anew for every frequency.',
  },
  {
    file: 'src/compute/combine/spectrum.ts',
    within: 'count < most && quiet < QUIET_RUN',
    to: ['quiet <= QUIET_RUN'],
    reason: 'One term more is negligible as well.',
  },
  {
    file: 'src/compute/combine/spectrum.ts',
    within: 'Math.abs(product.re) + Math.abs(product.im) < NEGLIGIBLE',
    to: ['Math.abs(product.re) + Math.abs(product.im) <= NEGLIGIBLE'],
    reason: 'Equality is a point of measure zero.',
  },
  {
    file: 'src/compute/combine/spread-sort.ts',
    within: 'k < values.length',
    to: ['k <= values.length'],
    reason: 'Beyond the end of a row nothing is written.',
  },
  {
    file: 'src/compute/combine/spread-sort.ts',
    within: 'place > 0 &&',
    to: ['true', 'place >= 0'],
    reason: 'Before the first value there is none that is larger.',
  },
  {
    file: 'src/compute/combine/spread-sort.ts',
    within: '(values[place - 1] as number) > value',
    to: ['values[place - 1] as number >= value'],
    reason: 'Of equal values either may come first.',
  },
  {
    file: 'src/compute/combine/spread-sort.ts',
    within: 'count / PER_BUCKET',
    to: ['count * PER_BUCKET'],
    reason:
      'The last pass puts any order right: which bucket a value goes through is a matter of speed alone.',
  },
  {
    file: 'src/compute/combine/spread-sort.ts',
    within: 'last / (to - from)',
    to: ['last * (to - from)', 'to + from'],
    reason:
      'The last pass puts any order right: which bucket a value goes through is a matter of speed alone.',
  },
  {
    file: 'src/compute/combine/spread-sort.ts',
    within: '(value: number) => Math.min(last, Math.max(0, (value - from) * perWidth)) | 0',
    to: ['() => undefined', '(value - from) / perWidth', 'value + from'],
    reason:
      'The last pass puts any order right: which bucket a value goes through is a matter of speed alone.',
  },
  {
    file: 'src/compute/combine/spread-sort.ts',
    within: `for (let k = 0; k < count; k++) {
    const b = bucketOf(values[k] as number);
    bucket[k] = b;
    starts[b + 1] = (starts[b + 1] as number) + 1;
  }`,
    to: [
      'false',
      '{ const b = bucketOf(values[k] as number); bucket[k] = b; starts[b + 1] = (starts[b + 1] as number) + 1; }',
      '{}',
    ],
    reason:
      'Not counted, all values go through the first bucket. The last pass puts any order right: which bucket a value goes through is a matter of speed alone.',
  },
  {
    file: 'src/compute/combine/spread-sort.ts',
    within: 'b < last',
    to: ['b <= last'],
    reason: 'The start of a bucket beyond the last is asked for by nobody.',
  },
  {
    file: 'src/compute/combine/spread-sort.ts',
    within: `for (let b = 0, begin = 0; b <= last; b++) {
    const end = starts[b] as number;
    if (end - begin >= CROWD) sorted.subarray(begin, end).sort();
    begin = end;
  }`,
    to: [
      'false',
      'true',
      'b < last',
      'b > last',
      '{}',
      'end - begin > CROWD',
      'end - begin < CROWD',
      'end + begin',
      'sorted.subarray(begin, end)',
    ],
    reason:
      'The last pass puts any order right: where crowds are sorted on their own is a matter of speed alone.',
  },
  {
    file: 'src/compute/combine/tied-columns.ts',
    within: 'k < rows',
    to: ['k <= rows'],
    reason: 'A rank more is drawn and dropped: the next ones are other random values, as good.',
  },
  {
    file: 'src/compute/combine/tied-columns.ts',
    within: 'i >= 0',
    to: ['i > 0'],
    reason: 'The first of the inputs is mixed of itself alone, with factor 1.',
  },
  {
    file: 'src/compute/combine/tied-columns.ts',
    within: 'factor[i]?.[i]',
    to: ['factor[i][i]'],
    reason: 'Every row of the matrix is there.',
  },
  {
    file: 'src/compute/combine/tied-columns.ts',
    within: 'factor[i]?.[j]',
    to: ['factor[i][j]'],
    reason: 'Every row of the matrix is there.',
  },
  {
    file: 'src/compute/combine/trials.ts',
    within: '({ location }) => location);',
    to: ['() => undefined'],
    reason: 'Every value is set anew for each trial.',
  },
  {
    file: 'src/compute/combine/whole-distribution.ts',
    within: `parts.length === 0
      ? symmetric`,
    to: ['false'],
    reason: 'Of no parts all are symmetric: the same interval is taken for the shortest.',
  },
  {
    file: 'src/compute/correction-line.ts',
    within: '(point.at - middle) * (point.correction - correction)) / across',
    to: ['point.at + middle', 'point.correction + correction'],
    reason:
      'Weighted deviations from the weighted mean sum to nothing: what is the same for all points drops out.',
  },
  {
    file: 'src/compute/correction-table.ts',
    within: 'below === undefined',
    to: ['false'],
    reason: 'Where there is a line above, there is one at or below it.',
  },
  {
    file: 'src/compute/distribution/mismatch-within.ts',
    within: '!(w > 1e-300) || complement === 0',
    to: ['false', '!(w > 1e-300) && complement === 0', 'true', 'w >= 1e-300'],
    reason: 'The nodes end at 1e-62 from either end, so that none is passed over.',
  },
  {
    file: 'src/compute/distribution/mismatch-within.ts',
    within: '1 - 2 ** -53',
    to: ['1 + 2 ** -53'],
    reason: 'At 1 the densities are what they are next to it, but for the last bit of 1.',
  },
  {
    file: 'src/compute/distribution/mismatch-within.ts',
    within: 'amplitude > 1',
    to: ['amplitude >= 1'],
    reason: 'At an amplitude of 1 all of w is seen: what is left of the share is 0 but for rounding.',
  },
  {
    file: 'src/compute/evaluate.ts',
    within: 'correlations = []',
    to: ['["Stryker was here"]'],
    reason: 'What names no inputs ties none.',
  },
  {
    file: 'src/compute/evaluate.ts',
    within: "model.kind !== 'sum') return { unavailable: unavailable ?? 'not-a-sum' }",
    to: ['false', '""'],
    reason: 'That it is no sum has been found already.',
  },
  {
    file: 'src/compute/helpful.ts',
    within: '() => 0',
    to: ['() => undefined'],
    reason: 'Prices that are no numbers differ by none, like equal ones.',
  },
  {
    file: 'src/compute/mean-of-methods.ts',
    within: 'between[i]?.[j]',
    to: ['between[i][j]'],
    reason: 'Every row of the matrix is there.',
  },
  {
    file: 'src/compute/mean-of-methods.ts',
    within: 'turn < MOST_TURNS',
    to: ['turn <= MOST_TURNS'],
    reason: 'One turn more after ten thousand moves nothing that could be seen.',
  },
  {
    file: 'src/compute/mean-of-methods.ts',
    within: 'turn++',
    to: ['turn--'],
    reason: 'Weights settle long before: turns are counted in case they did not.',
  },
  {
    file: 'src/compute/mean-of-methods.ts',
    within: 'i < count',
    to: ['i <= count'],
    reason: 'A method beyond the last has no variance: nothing is moved to it.',
  },
  {
    file: 'src/compute/mean-of-methods.ts',
    within: 'j < i;',
    to: ['j <= i'],
    reason: 'A method pulls as much as itself: it gives itself nothing.',
  },
  {
    file: 'src/compute/mean-of-methods.ts',
    within: 'moved < SETTLED',
    to: ['moved <= SETTLED'],
    reason: 'Equality is a point of measure zero.',
  },
  {
    file: 'src/compute/method/in-line-level.ts',
    within: 'back === 0',
    to: ['false'],
    reason: 'A trapezoid whose top is as wide as its base is a rectangle, and one of no width a constant.',
  },
  {
    file: 'src/compute/readings.ts',
    within: 'Math.abs(sum) >= Math.abs(value)',
    to: ['Math.abs(sum) > Math.abs(value)'],
    reason: 'Of equal size they add without loss, or cancel: nothing is lost either way.',
  },
  {
    file: 'src/compute/special/beta.ts',
    within: 'x < y ?',
    to: ['x <= y'],
    reason: 'At one half both forms are the same number, but for rounding.',
  },
  {
    file: 'src/compute/special/beta.ts',
    within: 'Math.abs(c * d - 1) >= CLOSE',
    to: ['Math.abs(c * d - 1) > CLOSE'],
    reason: 'No double differs from 1 by exactly so much.',
  },
  {
    file: 'src/compute/special/beta.ts',
    within: 'x <= 0',
    to: ['false', 'x < 0'],
    reason: 'At 0 the power term is 0, and so is the share.',
  },
  {
    file: 'src/compute/special/beta.ts',
    within: 'y <= 0',
    to: ['false', 'y < 0'],
    reason: 'There the power term is 0, and the share 1.',
  },
  {
    file: 'src/compute/special/beta.ts',
    within: 'x <= (a + 1) / (a + b + 2)',
    to: ['x < (a + 1) / (a + b + 2)'],
    reason: 'At the boundary itself both ways are right.',
  },
  {
    file: 'src/compute/special/deviance.ts',
    within: 'Math.abs(difference) >= SERIES_BELOW * (a + m)',
    to: ['Math.abs(difference) > SERIES_BELOW * (a + m)'],
    reason: 'At the boundary itself both ways are right.',
  },
  {
    file: 'src/compute/special/erf.ts',
    within: 'Math.abs(x) <= SMALL) return 1 - erfCentre(x)',
    to: ['Math.abs(x) < SMALL'],
    reason: 'At the boundary itself both ways are right.',
  },
  {
    file: 'src/compute/special/erf.ts',
    within: 'y > 27',
    to: ['y >= 27'],
    reason: 'At 27 the value is below 1e-318, where doubles hold no more digits.',
  },
  {
    file: 'src/compute/special/erf.ts',
    within: 'y <= 4 ?',
    to: ['y < 4'],
    reason: 'At the boundary itself both ways are right.',
  },
  {
    file: 'src/compute/special/erf.ts',
    within: 'x > 0 ? far',
    to: ['x >= 0'],
    reason: 'Near 0 the value has been returned before.',
  },
  {
    file: 'src/compute/special/erf.ts',
    within: 'Math.abs(x) <= SMALL) return erfCentre(x)',
    to: ['Math.abs(x) < SMALL'],
    reason: 'At the boundary itself both ways are right.',
  },
  {
    file: 'src/compute/special/gamma.ts',
    within: 'from < ASYMPTOTIC_FROM',
    to: ['from <= ASYMPTOTIC_FROM'],
    reason: 'At the boundary itself both ways are right.',
  },
  {
    file: 'src/compute/special/gamma.ts',
    within: '1 / 156 - (q * 3617) / 122400',
    to: ['1 / 156 + q * 3617 / 122400', 'q / 3617'],
    reason: 'This last term of the series is below 3e-17, a thirtieth of the accuracy stated.',
  },
  {
    file: 'src/compute/special/normals-along.ts',
    within: 'a * from * from > FADED',
    to: ['false', 'a * from * from >= FADED', 'a * from / from', 'a / from'],
    reason:
      'Terms beyond where a normal has faded are below 4e-18: leaving them out is a matter of speed alone.',
  },
  {
    file: 'src/compute/special/normals-along.ts',
    within: 'Math.ceil(Math.sqrt(FADED / a)) - from',
    to: ['Math.ceil(Math.sqrt(FADED / a)) + from'],
    reason:
      'Terms beyond where a normal has faded are below 4e-18: leaving them out is a matter of speed alone.',
  },
  {
    file: 'src/compute/special/normals-along.ts',
    within: 'i < count',
    to: ['i <= count'],
    reason: 'One term more has faded, or lies beyond the block, where nothing is written.',
  },
  {
    file: 'src/compute/special/normals-along.ts',
    within: 'multiple < from || multiple >= from + BLOCK',
    to: ['true', 'multiple <= from', 'from - BLOCK'],
    reason: 'A block made anew more often holds the same values: only speed differs.',
  },
  {
    file: 'src/compute/special/normals-along.ts',
    within: 'k < weight.length',
    to: ['k <= weight.length'],
    reason: 'A normal of no number adds no term.',
  },
  {
    file: 'src/compute/special/student.ts',
    within: `step < MOST_STEPS; step++) {
    const above`,
    to: ['step <= MOST_STEPS'],
    reason: 'The bound is met by a fault alone.',
  },
  {
    file: 'src/compute/special/student.ts',
    within: 'if (Math.abs(change) < CLOSE) break;',
    to: ['false', 'Math.abs(change) <= CLOSE'],
    reason: 'Steps beyond the last bit change nothing.',
  },
  {
    file: 'src/compute/special/student.ts',
    within: `step < MOST_STEPS; step++) {
    const change`,
    to: ['step <= MOST_STEPS'],
    reason: 'The bound is met by a fault alone.',
  },
  {
    file: 'src/compute/special/student.ts',
    within: 'share === 0 || share === 1',
    to: ['false'],
    reason: 'The search ends at infinity as well, where its tail is 0.',
  },
  {
    file: 'src/compute/special/student.ts',
    within: 'share === 0.5',
    to: ['false'],
    reason: 'The search for the middle begins and ends at 0.',
  },
  {
    file: 'src/compute/special/student.ts',
    within: 'centre < 0.25',
    to: ['centre <= 0.25'],
    reason: 'At the boundary itself both ways are right.',
  },
  {
    file: 'src/compute/special/student.ts',
    within: 'share < 0.5',
    to: ['share <= 0.5'],
    reason: 'The middle has been returned before.',
  },
  {
    file: 'src/compute/combine/cells.ts',
    within: 'part.shareBelow(centre + (first - 0.5) * width)',
    to: ['first + 0.5'],
    reason: 'What lies beyond the first cell is below 1e-10, half a cell more or less.',
  },
  {
    file: 'src/compute/combine/cells.ts',
    within: '1 - part.shareBelow(centre + (last + 0.5) * width)',
    to: ['last - 0.5'],
    reason: 'What lies beyond the last cell is below 1e-10, half a cell more or less.',
  },
  {
    file: 'src/compute/combine/cells.ts',
    within: 'into[first & (size - 1)] = (into[first & (size - 1)] as number) + below;',
    to: ['size + 1', '(into[first & size - 1] as number) - below'],
    reason: 'The share that is put there is below 1e-10, and counts as little elsewhere or taken away.',
  },
  {
    file: 'src/compute/combine/cells.ts',
    within: 'into[last & (size - 1)] = (into[last & (size - 1)] as number) + above;',
    to: ['(into[last & size - 1] as number) - above'],
    reason: 'The share that is put there is below 1e-10, and counts as little taken away.',
  },
  {
    file: 'src/compute/combine/cells.ts',
    within: 'Math.min(size / 2 - 3, Math.max(3 - size / 2, (x - centre) / width))',
    to: ['size / 2 + 3', 'size * 2'],
    reason: 'Nodes so far out that they meet the ends carry next to no weight.',
  },
  {
    file: 'src/compute/combine/cells.ts',
    within: 'if (!Number.isNaN(place)) deposit(into, place, weight);',
    to: ['true'],
    reason: 'A quantile is a number or infinite; the question is asked for parts that answer neither.',
  },
  {
    file: 'src/compute/combine/extent.ts',
    within: 'extent.period * FINENESS <= MOST_CELLS * extent.spread',
    to: ['extent.period * FINENESS < MOST_CELLS * extent.spread'],
    reason: 'Two products of measured lengths that are equal to the last bit.',
  },
];
