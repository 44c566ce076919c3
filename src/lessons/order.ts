import { TRACKS, type Track } from './tracks.ts';

/** As much of a lesson as its place among the others needs. */
interface Placed {
  readonly id: string;
  readonly data: { readonly track: Track; readonly order: number };
}

/** Lessons as they build on each other: track by track, and by their number within one. */
export function inOrder<Lesson extends Placed>(lessons: readonly Lesson[]): readonly Lesson[] {
  const tracks = Object.keys(TRACKS);
  const place = ({ data }: Placed): number => tracks.indexOf(data.track);
  return lessons.toSorted((a, b) => place(a) - place(b) || a.data.order - b.data.order);
}

/** The lessons before and after one, across tracks; none at either end. @throws RangeError for an id that no lesson has. */
export function neighboursOf<Lesson extends Placed>(
  lessons: readonly Lesson[],
  id: string,
): { readonly previous: Lesson | undefined; readonly next: Lesson | undefined } {
  const ordered = inOrder(lessons);
  const at = ordered.findIndex((lesson) => lesson.id === id);
  if (at < 0) throw new RangeError(`neighboursOf: a lesson must have the id, got ${JSON.stringify(id)}`);
  return { previous: ordered[at - 1], next: ordered[at + 1] };
}
