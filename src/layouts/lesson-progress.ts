import { beginLesson, keepProgress, keptProgress } from '../store/progress.ts';
import { strings } from './strings.ts';

/** Makes the foot of a lesson note that it was begun, and whether the reader calls it finished. */
export function startLessonProgress(foot: HTMLElement): void {
  const id = foot.dataset.lesson ?? '';
  const button = foot.querySelector('button');
  const told = foot.querySelector('[role="status"]');
  let finished = keptProgress(id) === 'finished';
  const show = (kept: boolean): void => {
    if (button) button.textContent = finished ? strings.unfinish : strings.finish;
    const words = finished ? strings.progress.finished : '';
    if (told) told.textContent = kept ? words : `${words} ${strings.refused}`.trim();
  };
  button?.addEventListener('click', () => {
    finished = !finished;
    show(keepProgress(id, finished ? 'finished' : 'begun'));
  });
  show(beginLesson(id));
}
