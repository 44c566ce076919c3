import type { AddressSpec } from '../../src/address/field-spec.ts';
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
import { linkSumSpec } from '../../src/widgets/link-sum/spec.ts';
import { meterSpec } from '../../src/widgets/own-meter/spec.ts';
import { type Lay, rowSpec } from '../../src/widgets/pads-in-a-row/spec.ts';
import { padsSpec } from '../../src/widgets/pads-line/spec.ts';
import { ratioSpec } from '../../src/widgets/ratio-ruler/spec.ts';
import { type Preset, presetSheet } from '../../src/widgets/reading-band/presets.ts';
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

/** Attributes of a tag as they stand in a lesson. */
export type Attributes = Readonly<Record<string, string>>;

/** What the address of a figure may say, by the figure's tag: one line for each tag that a lesson may use (`figure-tags.ts`). */
export const figureSpecs: Readonly<Record<string, (attributes: Attributes) => AddressSpec>> = {
  TwoMeansFigure: () => meansSpec,
  BandRulersFigure: () => bandRulersSpec,
  TwoSignalsFigure: () => signalsSpec,
  RatioFigure: () => ratioSpec(),
  TraceFigure: () => traceSpec,
  RulesFigure: () => rulesSpec,
  UnitTreeFigure: () => treeSpec,
  MeterFigure: () => meterSpec,
  BlocksFigure: () => blocksSpec,
  LinkSumFigure: () => linkSumSpec,
  DcHeatFigure: () => heatSpec,
  InLineFigure: () => inLineSpec,
  PadsFigure: () => padsSpec,
  TriesFigure: () => triesSpec,
  ReadingsFigure: () => readingsSpec,
  LineFigure: () => lineSpec,
  StairsFigure: () => stairsSpec,
  EnvelopeFigure: () => keyedSpec,
  RowFigure: ({ lay }) => rowSpec(lay as Lay),
  StatedFigure: () => statedSpec,
  BudgetFigure: () => budgetSpec,
  JoinedFigure: () => joinedSpec,
  SharedFigure: () => sharedSpec,
  VerdictFigure: () => verdictSpec,
  ScopeFigure: () => scopeSpec,
  DetectorFigure: () => detectorSpec,
  BorrowedFigure: () => borrowedSpec,
  SpendFigure: () => spendSpec,
  BackFigure: () => backSpec,
  ChainFigure: ({ preset }) =>
    bandSpec(presetSheet(preset as Preset), { showLimits: true, showCurve: false }),
};
