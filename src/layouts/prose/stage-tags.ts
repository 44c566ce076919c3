import StageBand from '../../stage/StageBand.astro';
import { pageTags } from './page-tags.ts';
import StageMore from './StageMore.astro';
import StageOnly from './StageOnly.astro';
import StageStep from './StageStep.astro';

/** The same tags as the stage renders them: a step is a slide, and what is for reading is left out. */
export const stageTags = { ...pageTags, Step: StageStep, More: StageMore, StageOnly, ChainFigure: StageBand };
