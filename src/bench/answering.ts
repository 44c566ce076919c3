/** What computes and words the results, and the views that show them: fetched once a reader begins to use the bench. */
export { remembered } from './results/remembered.ts';
export { LateParts } from './views/LateParts.tsx';
export { ResultSection } from './views/ResultSection.tsx';
export { RunningWords } from './views/RunningWords.tsx';
export { summarise } from './words/result-words.ts';
