/** What computes and words the results, and the views that show them: fetched once a reader begins to use the bench. */
export { remembered } from './remembered.ts';
export { summarise } from './result-words.ts';
export { LateParts } from './views/LateParts.tsx';
export { ResultSection } from './views/ResultSection.tsx';
export { RunningWords } from './views/RunningWords.tsx';
