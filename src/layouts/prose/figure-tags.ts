import StageBack from '../../stage/StageBack.astro';
import StageBand from '../../stage/StageBand.astro';
import StageBandRulers from '../../stage/StageBandRulers.astro';
import StageBlocks from '../../stage/StageBlocks.astro';
import StageBorrowed from '../../stage/StageBorrowed.astro';
import StageBudget from '../../stage/StageBudget.astro';
import StageDcHeat from '../../stage/StageDcHeat.astro';
import StageDetector from '../../stage/StageDetector.astro';
import StageEnvelope from '../../stage/StageEnvelope.astro';
import StageInLine from '../../stage/StageInLine.astro';
import StageJoined from '../../stage/StageJoined.astro';
import StageLevels from '../../stage/StageLevels.astro';
import StageLine from '../../stage/StageLine.astro';
import StageLinkSum from '../../stage/StageLinkSum.astro';
import StageMeter from '../../stage/StageMeter.astro';
import StagePads from '../../stage/StagePads.astro';
import StageRatio from '../../stage/StageRatio.astro';
import StageReadings from '../../stage/StageReadings.astro';
import StageRow from '../../stage/StageRow.astro';
import StageRules from '../../stage/StageRules.astro';
import StageScope from '../../stage/StageScope.astro';
import StageShared from '../../stage/StageShared.astro';
import StageSpend from '../../stage/StageSpend.astro';
import StageStated from '../../stage/StageStated.astro';
import StageTrace from '../../stage/StageTrace.astro';
import StageTree from '../../stage/StageTree.astro';
import StageTries from '../../stage/StageTries.astro';
import StageTwoMeans from '../../stage/StageTwoMeans.astro';
import StageTwoSignals from '../../stage/StageTwoSignals.astro';
import StageVerdict from '../../stage/StageVerdict.astro';
import BandRulers from '../../widgets/band-rulers/BandRulers.astro';
import BorrowedWidget from '../../widgets/borrowed/BorrowedWidget.astro';
import BudgetWidget from '../../widgets/budget/BudgetWidget.astro';
import DcHeat from '../../widgets/dc-heat/DcHeat.astro';
import DetectorWidget from '../../widgets/detector/DetectorWidget.astro';
import EnvelopeWidget from '../../widgets/envelope/EnvelopeWidget.astro';
import FewReadings from '../../widgets/few-readings/FewReadings.astro';
import GaugeBlocks from '../../widgets/gauge-blocks/GaugeBlocks.astro';
import InLineWidget from '../../widgets/in-line/InLineWidget.astro';
import Joined from '../../widgets/joined/Joined.astro';
import LevelWidget from '../../widgets/level-diagram/LevelWidget.astro';
import LevelLine from '../../widgets/level-line/LevelLine.astro';
import LinkSum from '../../widgets/link-sum/LinkSum.astro';
import OwnMeter from '../../widgets/own-meter/OwnMeter.astro';
import PadsInARow from '../../widgets/pads-in-a-row/PadsInARow.astro';
import PadsLineWidget from '../../widgets/pads-line/PadsLineWidget.astro';
import RatioRuler from '../../widgets/ratio-ruler/RatioRuler.astro';
import ReadingBandWidget from '../../widgets/reading-band/ReadingBandWidget.astro';
import ScopeWidget from '../../widgets/scope/ScopeWidget.astro';
import SharedCause from '../../widgets/shared-cause/SharedCause.astro';
import SpendWidget from '../../widgets/spend/SpendWidget.astro';
import StatedLimits from '../../widgets/stated/StatedLimits.astro';
import TraceWidget from '../../widgets/trace/TraceWidget.astro';
import Tries from '../../widgets/tries/Tries.astro';
import TwoMeans from '../../widgets/two-means/TwoMeans.astro';
import TwoRules from '../../widgets/two-rules/TwoRules.astro';
import TwoSignals from '../../widgets/two-signals/TwoSignals.astro';
import UnitTreeWidget from '../../widgets/unit-tree/UnitTreeWidget.astro';
import VerdictWidget from '../../widgets/verdict/VerdictWidget.astro';
import WhatComesBack from '../../widgets/what-comes-back/WhatComesBack.astro';

/** The figures that a lesson may show, by tag: as a page has them, and as the wall has them. */
export const figureTags = {
  TwoMeansFigure: { page: TwoMeans, stage: StageTwoMeans },
  BandRulersFigure: { page: BandRulers, stage: StageBandRulers },
  EnvelopeFigure: { page: EnvelopeWidget, stage: StageEnvelope },
  TwoSignalsFigure: { page: TwoSignals, stage: StageTwoSignals },
  LineFigure: { page: LevelLine, stage: StageLine },
  StairsFigure: { page: LevelWidget, stage: StageLevels },
  RatioFigure: { page: RatioRuler, stage: StageRatio },
  TraceFigure: { page: TraceWidget, stage: StageTrace },
  RulesFigure: { page: TwoRules, stage: StageRules },
  UnitTreeFigure: { page: UnitTreeWidget, stage: StageTree },
  MeterFigure: { page: OwnMeter, stage: StageMeter },
  BlocksFigure: { page: GaugeBlocks, stage: StageBlocks },
  LinkSumFigure: { page: LinkSum, stage: StageLinkSum },
  RowFigure: { page: PadsInARow, stage: StageRow },
  StatedFigure: { page: StatedLimits, stage: StageStated },
  BudgetFigure: { page: BudgetWidget, stage: StageBudget },
  JoinedFigure: { page: Joined, stage: StageJoined },
  SharedFigure: { page: SharedCause, stage: StageShared },
  VerdictFigure: { page: VerdictWidget, stage: StageVerdict },
  DcHeatFigure: { page: DcHeat, stage: StageDcHeat },
  InLineFigure: { page: InLineWidget, stage: StageInLine },
  PadsFigure: { page: PadsLineWidget, stage: StagePads },
  ScopeFigure: { page: ScopeWidget, stage: StageScope },
  DetectorFigure: { page: DetectorWidget, stage: StageDetector },
  TriesFigure: { page: Tries, stage: StageTries },
  BorrowedFigure: { page: BorrowedWidget, stage: StageBorrowed },
  SpendFigure: { page: SpendWidget, stage: StageSpend },
  BackFigure: { page: WhatComesBack, stage: StageBack },
  ReadingsFigure: { page: FewReadings, stage: StageReadings },
  ChainFigure: { page: ReadingBandWidget, stage: StageBand },
};

/** One form of every figure, by tag. */
export const figuresFor = (form: 'page' | 'stage') =>
  Object.fromEntries(Object.entries(figureTags).map(([tag, forms]) => [tag, forms[form]]));
