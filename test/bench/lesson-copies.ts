/** A title of so many letters fits on any card. */
const SHORT = 24;

/** The source of a lesson under another title, no longer than its own: two pages may not have the same one, and it stands on a card. */
export function copyOfLesson(source: string, number: number): string {
  const copy = source.replace(/^title: (["']?)(.*)$/m, (_, quote: string, title: string) => {
    const bare = quote === '' ? title : title.replace(new RegExp(`${quote}$`), '');
    const other = `Copy ${number} of ${bare}`.slice(0, Math.max(SHORT, bare.length)).trimEnd();
    return `title: ${quote}${other}${quote}`;
  });
  if (copy === source) throw new Error('copyOfLesson: wish a lesson with a title, got none');
  return copy;
}

/** What one build took. */
export interface Built {
  readonly lessons: number;
  readonly seconds: number;
  readonly megabytes: number;
}

/** Seconds that each lesson more than in the build before added. */
const secondsEach = (now: Built, before: Built): number =>
  (now.seconds - before.seconds) / (now.lessons - before.lessons);

/**
 * A line for each build: the whole, what each lesson more than in the build before added, and how many times as much that is as it was
 * from the build before that one: about 1 if the cost grows as the lessons do.
 */
export const costPerLesson = (all: readonly Built[]) =>
  all.map((built, index) => {
    const [before, earlier] = [all[index - 1], all[index - 2]];
    const each = before && secondsEach(built, before);
    const eachBefore = before && earlier && secondsEach(before, earlier);
    const rounded = (value: number | undefined): number | string =>
      value === undefined ? '' : Number(value.toFixed(3));
    return {
      lessons: built.lessons,
      'processor s': Number(built.seconds.toFixed(1)),
      'peak MB': Math.round(built.megabytes),
      's a further lesson': rounded(each),
      'MB a further lesson': rounded(
        before && (built.megabytes - before.megabytes) / (built.lessons - before.lessons),
      ),
      'times the step before': rounded(each !== undefined && eachBefore ? each / eachBefore : undefined),
    };
  });
