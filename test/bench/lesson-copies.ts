/** The source of a lesson under another title: two pages may not have the same one. */
export function copyOfLesson(source: string, number: number): string {
  const copy = source.replace(/^title: (["']?)(.*)$/m, (_, quote: string, title: string) => {
    const bare = quote === '' ? title : title.replace(new RegExp(`${quote}$`), '');
    return `title: ${quote}Copy ${number} of ${bare.slice(0, 60)}${quote}`;
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

/** A line for each build: the whole, and what each lesson more than in the build before added. */
export const costPerLesson = (all: readonly Built[]) =>
  all.map(({ lessons, seconds, megabytes }, index) => {
    const before = all[index - 1];
    const more = before === undefined ? undefined : lessons - before.lessons;
    const each = (now: number, then = 0): number | string =>
      more === undefined ? '' : Number(((now - then) / more).toFixed(3));
    return {
      lessons,
      'processor s': Number(seconds.toFixed(1)),
      'peak MB': Math.round(megabytes),
      's a further lesson': each(seconds, before?.seconds),
      'MB a further lesson': each(megabytes, before?.megabytes),
    };
  });
