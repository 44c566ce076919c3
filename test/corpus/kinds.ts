import type { AddressSpec } from '../../src/address/field-spec.ts';
import { sheetAddressSpec } from '../../src/bench/address/address-spec.ts';
import { borrowAddressSpec } from '../../src/borrow/address.ts';
import { compareAddressSpec } from '../../src/compare/address.ts';
import { bandRulersSpec } from '../../src/widgets/band-rulers/spec.ts';
import { borrowedSpec } from '../../src/widgets/borrowed/spec.ts';
import { budgetSpec } from '../../src/widgets/budget/spec.ts';
import { heatSpec } from '../../src/widgets/dc-heat/spec.ts';
import { detectorSpec } from '../../src/widgets/detector/spec.ts';
import { keyedSpec } from '../../src/widgets/envelope/spec.ts';
import { readingsSpec } from '../../src/widgets/few-readings/spec.ts';
import { blocksSpec } from '../../src/widgets/gauge-blocks/spec.ts';
import { inLineSpec } from '../../src/widgets/in-line/spec.ts';
import { joinedSpec } from '../../src/widgets/joined/spec.ts';
import { stairsSpec } from '../../src/widgets/level-diagram/spec.ts';
import { lineSpec } from '../../src/widgets/level-line/spec.ts';
import { levelTableSpec } from '../../src/widgets/level-table/spec.ts';
import { linkSumSpec } from '../../src/widgets/link-sum/spec.ts';
import { meterSpec } from '../../src/widgets/own-meter/spec.ts';
import { rowSpec } from '../../src/widgets/pads-in-a-row/spec.ts';
import { padsSpec } from '../../src/widgets/pads-line/spec.ts';
import { ratioSpec } from '../../src/widgets/ratio-ruler/spec.ts';
import { presetSheet } from '../../src/widgets/reading-band/presets.ts';
import { bandSpec } from '../../src/widgets/reading-band/spec.ts';
import { scopeSpec } from '../../src/widgets/scope/spec.ts';
import { sharedSpec } from '../../src/widgets/shared-cause/spec.ts';
import { spendSpec } from '../../src/widgets/spend/spec.ts';
import { statedSpec } from '../../src/widgets/stated/spec.ts';
import { traceSpec } from '../../src/widgets/trace/spec.ts';
import { triesSpec } from '../../src/widgets/tries/spec.ts';
import { meansSpec } from '../../src/widgets/two-means/spec.ts';
import { rulesSpec } from '../../src/widgets/two-rules/spec.ts';
import { signalsSpec } from '../../src/widgets/two-signals/spec.ts';
import { treeSpec } from '../../src/widgets/unit-tree/spec.ts';
import { verdictSpec } from '../../src/widgets/verdict/spec.ts';
import { backSpec } from '../../src/widgets/what-comes-back/spec.ts';
import { spec as codec } from '../address/demonstration.ts';

/** Every kind of address that this site makes, with its present specification. A new kind is added here and in `addresses.ts`. */
export const kinds = {
  /** `/learn/decibels/a-decibel-is-not-a-percentage/?...`, of the second figure */
  means: meansSpec,
  /** `/learn/decibels/a-decibel-is-not-a-percentage/?...` */
  bands: bandRulersSpec,
  /** `/learn/decibels/levels-and-gains/?...`, of the second figure */
  signals: signalsSpec,
  /** `/learn/decibels/levels-and-gains/?...` */
  sum: lineSpec,
  /** `/learn/decibels/ratios-that-add/?...` */
  ratio: ratioSpec(),
  /** No page: one field of every type, so that the codec itself can never lose an old address. */
  codec,
  /** `/bench/#...` */
  bench: sheetAddressSpec(),
  /** `/bench/borrow/#...` */
  borrow: borrowAddressSpec(),
  /** `/bench/compare/#...` */
  compare: compareAddressSpec(),
  /** `/?...` and `/learn/traceability/the-chain-to-the-definition/?...` */
  club: bandSpec(presetSheet('club'), { showLimits: true, showCurve: false }),
  /** `/examples/two-pads-into-a-receiver/?...` */
  'two-pads': bandSpec(presetSheet('two-pads'), { showLimits: true, showCurve: false }),
  /** `/learn/decibels/volts-and-watts/?...` */
  trace: traceSpec,
  /** `/learn/decibels/down-the-line/?...` */
  line: stairsSpec,
  /** `/learn/traceability/measuring-is-comparing/?...` */
  rules: rulesSpec,
  /** `/learn/traceability/calibration-changes-nothing/?...` */
  meter: meterSpec,
  /** `/learn/traceability/blocks-and-warm-hands/?...` */
  blocks: blocksSpec,
  /** `/learn/stacking/the-whole-shape/?...` */
  shape: linkSumSpec,
  /** `/learn/stacking/a-million-tries/?...` */
  tries: triesSpec,
  /** `/learn/stacking/a-few-readings/?...` */
  readings: readingsSpec,
  /** `/learn/traceability/what-a-watt-is-made-of/?...` */
  units: treeSpec,
  /** `/learn/stacking/at-right-angles/?...` */
  angles: rowSpec('angles'),
  /** `/learn/stacking/worst-case/?...` */
  row: rowSpec('straight'),
  /** `/learn/stacking/what-a-tolerance-says/?...` */
  stated: statedSpec,
  /** `/reference/tables/?...` */
  levelTable: levelTableSpec,
  /** `/learn/measuring/oscilloscope-across-a-load/?...` */
  scope: scopeSpec,
  /** `/learn/measuring/what-comes-back/?...` */
  back: backSpec,
  /** `/learn/measuring/peak-detector/?...` */
  detector: detectorSpec,
  /** `/learn/decibels/which-power/?...` */
  keyed: keyedSpec,
  /** `/learn/stacking/shared-causes/?...` */
  shared: sharedSpec,
  /** `/learn/measuring/the-meter-joins-the-circuit/?...` */
  joined: joinedSpec,
  /** `/learn/measuring/inside-outside-cant-tell/?...` */
  verdict: verdictSpec,
  /** `/learn/measuring/radio-watts-from-dc-watts/?...` */
  heat: heatSpec,
  /** `/learn/measuring/in-line-meter/?...` */
  inLine: inLineSpec,
  /** `/learn/measuring/pads-into-a-meter/?...` */
  pads: padsSpec,
  /** `/learn/measuring/where-to-spend/?...` */
  spend: spendSpec,
  /** `/learn/stacking/writing-it-down/?...` */
  budget: budgetSpec,
  /** `/learn/measuring/borrowing-a-calibration/?...` */
  borrowed: borrowedSpec,
} as const satisfies Readonly<Record<string, AddressSpec>>;

export type Kind = keyof typeof kinds;
