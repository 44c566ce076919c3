import { beginLesson, keepProgress, keptProgress } from '../store/progress.ts';
import { strings } from './strings.ts';

/** Makes the foot of a lesson note that it was begun, and whether the reader calls it finished. */
export function startLessonProgress(foot: HTMLElement): void {
  const id = foot.dataset.lesson ?? '';
  const button = foot.querySelector('button');
  const told = foot.querySelector('[role="status"]');
  let finished = keptProgress(id) === 'finished';
  let isKept = beginLesson(id);
  const show = (): void => {
    if (button) button.textContent = finished ? strings.unfinish : strings.finish;
    const words = finished ? strings.progress.finished : '';
    if (told) told.textContent = isKept ? words : `${words} ${strings.refused}`.trim();
  };
  button?.addEventListener('click', () => {
    finished = !finished;
    isKept = keepProgress(id, finished ? 'finished' : 'begun');
    show();
  });
  show();
  // another tab, or the list of lessons, may say otherwise
  addEventListener('storage', () => {
    const isFinished = keptProgress(id) === 'finished';
    if (!isKept || isFinished === finished) return;
    finished = isFinished;
    show();
  });
}
