import StageCharges from '../../stage/StageCharges.astro';
import { figuresFor } from './figure-tags.ts';
import { pageTags } from './page-tags.ts';
import StageBreak from './StageBreak.astro';
import StageGuessFirst from './StageGuessFirst.astro';
import StageLeftOut from './StageLeftOut.astro';
import StageMistake from './StageMistake.astro';
import StageMore from './StageMore.astro';
import StageOnly from './StageOnly.astro';
import StageStep from './StageStep.astro';
import StageTryState from './StageTryState.astro';
import StageValue from './StageValue.astro';

/** The same tags as the stage renders them: a step is a slide, what is for reading is for the notes, and a word is just a word. */
export const stageTags = {
  ...pageTags,
  Step: StageStep,
  More: StageMore,
  StageOnly,
  StageBreak,
  Mistake: StageMistake,
  Value: StageValue,
  TryState: StageTryState,
  GuessFirst: StageGuessFirst,
  OpenBench: StageLeftOut,
  CheckYourself: StageLeftOut,
  Sources: StageLeftOut,
  Word: StageOnly,
  CountedCharges: StageCharges,
  ...figuresFor('stage'),
};
