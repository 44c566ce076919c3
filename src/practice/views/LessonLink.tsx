import { useContext } from 'preact/hooks';
import { AroundContext } from './context.ts';

/** Leads to a lesson by its title. */
export function LessonLink({ id }: { readonly id: string }) {
  const { root, lessons } = useContext(AroundContext);
  return <a href={`${root}learn/${id}/`}>{lessons[id] ?? id}</a>;
}
