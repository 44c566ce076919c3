import type { ComponentType } from 'preact';
import StageBack from '../StageBack.tsx';
import StageBand from '../StageBand.tsx';
import StageBandRulers from '../StageBandRulers.tsx';
import StageBlocks from '../StageBlocks.tsx';
import StageBoards from '../StageBoards.tsx';
import StageBorrowed from '../StageBorrowed.tsx';
import StageBudget from '../StageBudget.tsx';
import StageDcHeat from '../StageDcHeat.tsx';
import StageDetector from '../StageDetector.tsx';
import StageEnvelope from '../StageEnvelope.tsx';
import StageGuess from '../StageGuess.tsx';
import StageInLine from '../StageInLine.tsx';
import StageJoined from '../StageJoined.tsx';
import StageLevels from '../StageLevels.tsx';
import StageLine from '../StageLine.tsx';
import StageLinkSum from '../StageLinkSum.tsx';
import StageMeter from '../StageMeter.tsx';
import StagePads from '../StagePads.tsx';
import StageRatio from '../StageRatio.tsx';
import StageReadings from '../StageReadings.tsx';
import StageRow from '../StageRow.tsx';
import StageRules from '../StageRules.tsx';
import StageScope from '../StageScope.tsx';
import StageShared from '../StageShared.tsx';
import StageSimulation from '../StageSimulation.tsx';
import StageSpend from '../StageSpend.tsx';
import StageStated from '../StageStated.tsx';
import StageTrace from '../StageTrace.tsx';
import StageTree from '../StageTree.tsx';
import StageTries from '../StageTries.tsx';
import StageTwoMeans from '../StageTwoMeans.tsx';
import StageTwoSignals from '../StageTwoSignals.tsx';
import StageVerdict from '../StageVerdict.tsx';

/** Every island that a stage page may hold, by the name that its page has for it. Each is given what its own page wrote down for it. */
export const components = {
  StageBack,
  StageBand,
  StageBandRulers,
  StageBlocks,
  StageBoards,
  StageBorrowed,
  StageBudget,
  StageDcHeat,
  StageDetector,
  StageEnvelope,
  StageGuess,
  StageInLine,
  StageJoined,
  StageLevels,
  StageLine,
  StageLinkSum,
  StageMeter,
  StagePads,
  StageRatio,
  StageReadings,
  StageRow,
  StageRules,
  StageScope,
  StageShared,
  StageSimulation,
  StageSpend,
  StageStated,
  StageTrace,
  StageTree,
  StageTries,
  StageTwoMeans,
  StageTwoSignals,
  StageVerdict,
} as unknown as Readonly<Record<string, ComponentType<Record<string, unknown>>>>;
