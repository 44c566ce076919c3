import StageCharges from '../../stage/StageCharges.astro';
import { figuresFor } from './figure-tags.ts';
import { pageTags } from './page-tags.ts';
import StageMistake from './StageMistake.astro';
import StageMore from './StageMore.astro';
import StageOnly from './StageOnly.astro';
import StageStep from './StageStep.astro';

/** The same tags as the stage renders them: a step is a slide, what is for reading is left out, and a word is just a word. */
export const stageTags = {
  ...pageTags,
  Step: StageStep,
  More: StageMore,
  StageOnly,
  Mistake: StageMistake,
  OpenBench: StageMore,
  Word: StageOnly,
  CountedCharges: StageCharges,
  ...figuresFor('stage'),
};
