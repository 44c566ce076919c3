import { useEffect, useState } from 'preact/hooks';
import type { Misconception } from '../../questions/bank/misconceptions.ts';
import { mistakesOf } from '../bank.ts';
import { strings } from '../strings.ts';
import { LessonLink } from './LessonLink.tsx';

/** Misconceptions by their ids, once they are fetched; none where they cannot be. */
function useMistakes(ids: readonly string[]): ReadonlyMap<string, Misconception> {
  const [found, setFound] = useState<ReadonlyMap<string, Misconception>>(new Map());
  const key = ids.join(' ');
  useEffect(() => {
    let isWanted = true;
    const wanted = key === '' ? [] : key.split(' ');
    if (wanted.length > 0)
      mistakesOf(wanted).then(
        (mistakes) => isWanted && setFound(mistakes),
        () => undefined, // the reply beside the answer has said what matters
      );
    return () => {
      isWanted = false;
    };
  }, [key]);
  return found;
}

/** Names a misconception and the lesson that puts it right. */
export function MistakeLine({ id }: { readonly id: string }) {
  const found = useMistakes([id]).get(id);
  return found === undefined ? null : (
    <p>
      {strings.form.mistake} <strong>{found.name}</strong>. {strings.form.lesson}{' '}
      <LessonLink id={found.cure} />
    </p>
  );
}

interface MistakeListProps {
  readonly ids: readonly string[];
  /** What to say to each. */
  readonly told?: (id: string) => string;
}

/** Several misconceptions, each with its lesson. */
export function MistakeList({ ids, told }: MistakeListProps) {
  const found = useMistakes(ids);
  return (
    <ul>
      {ids.map((id) => {
        const mistake = found.get(id);
        return (
          mistake && (
            <li key={id}>
              <strong>{mistake.name}</strong>
              {told && `, ${told(id)}`}. {strings.form.lesson} <LessonLink id={mistake.cure} />
            </li>
          )
        );
      })}
    </ul>
  );
}
