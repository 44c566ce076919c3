import ReadingBandWidget from '../../widgets/reading-band/ReadingBandWidget.astro';
import Caution from './Caution.astro';
import CheckYourself from './CheckYourself.astro';
import Formula from './Formula.astro';
import Given from './Given.astro';
import GuessFirst from './GuessFirst.astro';
import More from './More.astro';
import Sources from './Sources.astro';
import StageMore from './StageMore.astro';
import Step from './Step.astro';
import Takeaways from './Takeaways.astro';
import TryState from './TryState.astro';
import Value from './Value.astro';

/** The tags that a lesson may use, as the page renders them. */
export const pageTags = {
  Step,
  More,
  StageOnly: StageMore,
  Value,
  Formula,
  Given,
  GuessFirst,
  CheckYourself,
  Caution,
  Takeaways,
  Sources,
  TryState,
  ChainFigure: ReadingBandWidget,
};
