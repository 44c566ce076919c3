import { forgetLearning, remembers } from '../store/learning.ts';
import { keptProgress } from '../store/progress.ts';
import { learnStrings } from './learn-strings.ts';
import { strings } from './strings.ts';

/** Marks every lesson of the list with how far the reader is, says it in sum, and lets the reader forget it. */
export function startLearnProgress(root: ParentNode): void {
  const marks = [...root.querySelectorAll<HTMLElement>('[data-lesson]')];
  const told = root.querySelector('[role="status"]');
  const button = root.querySelector<HTMLButtonElement>('[data-forget]');
  // asked once: asking writes, which other tabs hear of
  const isRefused = !remembers();
  const show = (): void => {
    const all = marks.map((mark) => keptProgress(mark.dataset.lesson ?? ''));
    marks.forEach((mark, index) => {
      const progress = all[index];
      mark.textContent = progress === undefined ? '' : strings.progress[progress];
    });
    const begun = all.filter((progress) => progress !== undefined).length;
    const finished = all.filter((progress) => progress === 'finished').length;
    const counted = begun === 0 ? learnStrings.none : learnStrings.count(finished, all.length);
    if (told) told.textContent = isRefused ? strings.refused : counted;
    if (button) button.disabled = begun === 0;
  };
  show();
  addEventListener('storage', show);
  button?.addEventListener('click', () => {
    if (!confirm(learnStrings.reallyForget)) return;
    const forgotten = forgetLearning();
    show();
    if (told) told.textContent = forgotten ? learnStrings.forgotten : strings.refused;
  });
}
