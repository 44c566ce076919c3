import type { CollectionEntry } from 'astro:content';

/** Routes of every lesson, for its page and for its stage: `track/slug`. */
export const lessonPaths = (lessons: readonly CollectionEntry<'lessons'>[]) =>
  lessons.map((lesson) => {
    const [track = '', slug = ''] = lesson.id.split('/');
    return { params: { track, lesson: slug }, props: { lesson } };
  });
