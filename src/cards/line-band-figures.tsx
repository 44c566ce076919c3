import type { AddressSpec } from '../address/field-spec.ts';
import { LineBand, type LineBandWords } from '../figures/LineBand.tsx';
import type { LineBandProps } from '../figures/line-band.layout.ts';
import { figureOf as borrowed } from '../widgets/borrowed/figure.ts';
import { borrowedSpec } from '../widgets/borrowed/spec.ts';
import { strings as borrowedStrings } from '../widgets/borrowed/strings.ts';
import { figureOf as budget } from '../widgets/budget/figure.ts';
import { budgetSpec } from '../widgets/budget/spec.ts';
import { strings as budgetStrings } from '../widgets/budget/strings.ts';
import { figureOf as dcHeat } from '../widgets/dc-heat/figure.ts';
import { heatSpec } from '../widgets/dc-heat/spec.ts';
import { strings as heatStrings } from '../widgets/dc-heat/strings.ts';
import { figureOf as detector } from '../widgets/detector/figure.ts';
import { detectorSpec } from '../widgets/detector/spec.ts';
import { strings as detectorStrings } from '../widgets/detector/strings.ts';
import { figureOf as inLine } from '../widgets/in-line/figure.ts';
import { inLineSpec } from '../widgets/in-line/spec.ts';
import { strings as inLineStrings } from '../widgets/in-line/strings.ts';
import { figureOf as joined } from '../widgets/joined/figure.ts';
import { joinedSpec } from '../widgets/joined/spec.ts';
import { strings as joinedStrings } from '../widgets/joined/strings.ts';
import { figureOf as ownMeter } from '../widgets/own-meter/figure.ts';
import { meterSpec } from '../widgets/own-meter/spec.ts';
import { strings as meterStrings } from '../widgets/own-meter/strings.ts';
import { figureOf as padsLine } from '../widgets/pads-line/figure.ts';
import { padsSpec } from '../widgets/pads-line/spec.ts';
import { strings as padsStrings } from '../widgets/pads-line/strings.ts';
import type { FieldsState, PlainFields } from '../widgets/parts/fields.ts';
import { figureOf as scope } from '../widgets/scope/figure.ts';
import { scopeSpec } from '../widgets/scope/spec.ts';
import { strings as scopeStrings } from '../widgets/scope/strings.ts';
import { figureOf as sharedCause } from '../widgets/shared-cause/figure.ts';
import { sharedSpec } from '../widgets/shared-cause/spec.ts';
import { strings as sharedStrings } from '../widgets/shared-cause/strings.ts';
import { figureOf as spend } from '../widgets/spend/figure.ts';
import { spendSpec } from '../widgets/spend/spec.ts';
import { strings as spendStrings } from '../widgets/spend/strings.ts';
import { figureOf as twoRules } from '../widgets/two-rules/figure.ts';
import { rulesSpec } from '../widgets/two-rules/spec.ts';
import { strings as rulesStrings } from '../widgets/two-rules/strings.ts';
import { figureOf as comesBack } from '../widgets/what-comes-back/figure.ts';
import { backSpec } from '../widgets/what-comes-back/spec.ts';
import { strings as backStrings } from '../widgets/what-comes-back/strings.ts';
import { begun, type Drawn, onCard } from './drawn.ts';

/** A line over a band, as a widget of plain fields draws it. */
const lineBand =
  <Of extends PlainFields>(
    spec: AddressSpec<Of>,
    figureOf: (state: FieldsState<Of>) => Omit<LineBandProps, 'frame'>,
    words: LineBandWords,
  ): Drawn =>
  (given) => <LineBand {...onCard} {...figureOf(begun(spec, given))} words={words} />;

/** Figures of a line over a band, by the tag that lessons show them by. */
export const lineBandFigures = {
  MeterFigure: lineBand(meterSpec, ownMeter, meterStrings.axes),
  RulesFigure: lineBand(rulesSpec, twoRules, rulesStrings.axes),
  BudgetFigure: lineBand(budgetSpec, budget, budgetStrings.axes[budgetSpec.fields.subject.default]),
  JoinedFigure: lineBand(joinedSpec, joined, joinedStrings.axes.source),
  SharedFigure: lineBand(sharedSpec, sharedCause, sharedStrings.axes.pair),
  DcHeatFigure: lineBand(heatSpec, dcHeat, heatStrings.axes),
  InLineFigure: lineBand(inLineSpec, inLine, inLineStrings.axes),
  PadsFigure: lineBand(padsSpec, padsLine, padsStrings.axes),
  ScopeFigure: lineBand(scopeSpec, scope, scopeStrings.axes),
  DetectorFigure: lineBand(detectorSpec, detector, detectorStrings.axes),
  BorrowedFigure: lineBand(borrowedSpec, borrowed, borrowedStrings.axes[borrowedSpec.fields.item.default]),
  SpendFigure: lineBand(spendSpec, spend, {
    up: spendStrings.up,
    along: spendStrings.along[spendSpec.fields.link.default],
    limit: spendStrings.limit,
  }),
  BackFigure: lineBand(backSpec, comesBack, backStrings.axes),
} as const satisfies Readonly<Record<string, Drawn>>;
