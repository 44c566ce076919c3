import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { LinkEntries } from '../../sheet/entries.ts';
import { linkPath } from '../form/keys.ts';
import type { EntryProblem } from '../read/collector.ts';
import type { BenchAction } from '../state/actions.ts';
import { strings } from '../strings.ts';
import { moveBetween, movedWords } from '../words/moved-words.ts';
import { AddLink } from './AddLink.tsx';
import type { PartProps } from './context.ts';
import { LinkItem, type LinkItemProps } from './LinkItem.tsx';
import { CAUSES_ID } from './LinkMore.tsx';
import { landingMark, useLinkDrag } from './use-link-drag.ts';

type LinksPartProps = Pick<PartProps['entries'], 'links' | 'method' | 'date'> &
  Pick<LinkItemProps, 'drawing'> &
  Omit<PartProps, 'entries'>;

const NONE: readonly EntryProblem[] = [];

/** What is wrong with one link; the same empty list for all with which nothing is. */
function problemsOf(problems: readonly EntryProblem[], id: string): readonly EntryProblem[] {
  const own = problems.filter(({ path }) => path.startsWith(linkPath(id, '')));
  return own.length === 0 ? NONE : own;
}

/** Says of a link that was moved where it stands then, also when that was taken back: the result may stay as it is. */
function useToldMoves(links: readonly LinkEntries[], send: PartProps['send']) {
  const [told, setTold] = useState('');
  const before = useRef(links);
  const meant = useRef<string>();
  useEffect(() => {
    const move = moveBetween(before.current, links, meant.current);
    setTold(move === undefined ? '' : movedWords(before.current, move));
    before.current = links;
  }, [links]);
  const sendTold = useCallback(
    (action: BenchAction): void => {
      if (action.type === 'move') meant.current = action.id;
      send(action);
    },
    [send],
  );
  return { told, sendTold };
}

/** All links in their order, which buttons or a dragged grip change, and a way to add one. */
export function LinksPart({ links, method, date, problems, drawing, send }: LinksPartProps) {
  const { told, sendTold } = useToldMoves(links, send);
  const list = useRef<HTMLOListElement>(null);
  const { dragged, handlers } = useLinkDrag({
    list,
    order: links.map(({ id }) => id),
    move: (id, to) => sendTold({ type: 'move', id, to }),
  });
  const causes = [...new Set(links.map(({ cause }) => cause.trim()))].filter((cause) => cause !== '');
  return (
    <fieldset class="bench-part">
      <legend>{strings.sections.links}</legend>
      <p class="measure">{strings.links.intro}</p>
      {links.length === 0 && <p>{strings.links.none}</p>}
      <ol ref={list} class="links" data-dragging={dragged && ''} {...handlers}>
        {links.map((link, index) => (
          <LinkItem
            key={link.id}
            link={link}
            method={method}
            day={date}
            drawing={drawing}
            problems={problemsOf(problems, link.id)}
            send={sendTold}
            position={index + 1}
            count={links.length}
            mark={landingMark(dragged, index)}
          />
        ))}
      </ol>
      <datalist id={CAUSES_ID}>
        {causes.map((cause) => (
          <option key={cause} value={cause} />
        ))}
      </datalist>
      <AddLink count={links.length} send={send} />
      <p class="visually-hidden" role="status">
        {told}
      </p>
    </fieldset>
  );
}
