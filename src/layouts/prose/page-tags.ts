import Caution from './Caution.astro';
import CheckYourself from './CheckYourself.astro';
import DefinitionDates from './DefinitionDates.astro';
import Formula from './Formula.astro';
import { figuresFor } from './figure-tags.ts';
import Given from './Given.astro';
import GuessFirst from './GuessFirst.astro';
import Mistake from './Mistake.astro';
import More from './More.astro';
import OpenBench from './OpenBench.astro';
import Sources from './Sources.astro';
import StageLeftOut from './StageLeftOut.astro';
import Step from './Step.astro';
import Takeaways from './Takeaways.astro';
import TryState from './TryState.astro';
import Value from './Value.astro';
import Word from './Word.astro';

/** The tags that a lesson may use, as the page renders them. Figures have a table of their own. */
export const pageTags = {
  Step,
  More,
  StageOnly: StageLeftOut,
  StageBreak: StageLeftOut,
  Value,
  Word,
  Formula,
  Given,
  GuessFirst,
  CheckYourself,
  Mistake,
  Caution,
  Takeaways,
  Sources,
  TryState,
  OpenBench,
  DefinitionDates,
  /** On the wall alone: the page has the same numbers beside its figure. */
  CountedCharges: StageLeftOut,
  ...figuresFor('page'),
};
