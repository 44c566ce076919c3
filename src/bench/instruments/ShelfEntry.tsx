import { useMemo } from 'preact/hooks';
import type { Day } from '../../instruments/day.ts';
import type { InstrumentEntries } from '../../instruments/instrument.ts';
import { isolated } from '../../text/isolate.ts';
import { controlId } from '../form/keys.ts';
import { ageWords } from './age-words.ts';
import { choiceStrings } from './choice-strings.ts';
import { InstrumentForm } from './InstrumentForm.tsx';
import { fullName, nameOf, statementLine } from './instrument-words.ts';
import type { ShelfItem } from './shelf.ts';
import { shelfStrings as strings } from './shelf-strings.ts';
import { instrumentStrings } from './strings.ts';

/** What can be done with one instrument of the list. */
export interface EntryActs {
  readonly onEdit: (id: string, change: Partial<InstrumentEntries>) => void;
  readonly onOpen: (id: string | undefined) => void;
  readonly onDuplicate: (item: ShelfItem) => void;
  readonly onRemove: (id: string) => void;
  readonly onTakeKept: (id: string) => void;
}

interface EntryProps extends EntryActs {
  readonly item: ShelfItem;
  readonly open: boolean;
  readonly today: Day | undefined;
  /** Whether the page says already why nothing is kept. */
  readonly told: boolean;
  /** Whether the shelf takes no more; the page says so beside the list. */
  readonly full: boolean;
}

/** Id of the button that opens an instrument's form. */
export const editButtonId = (id: string): string => controlId(`instrument-${id}.edit`);

/** One instrument: what it states in a line, its age, and its form while that is open. Drawn again only if something of it changed. */
export function ShelfEntry(props: EntryProps) {
  const { item, open, today, told, full } = props;
  return useMemo(() => <WholeEntry {...props} />, [item, open, today, told, full]);
}

function WholeEntry({ item, open, today, told, full, ...acts }: EntryProps) {
  const { id, value, problem } = item;
  const age = today && ageWords(value, today);
  return (
    <li>
      <h3>{fullName(value)}</h3>
      <p class="small">{instrumentStrings.kinds[value.kind]}</p>
      <p>{statementLine(value) ?? strings.unfinished}</p>
      {age && <p class={age.warns ? 'problem' : 'small'}>{age.text}</p>}
      {problem !== undefined && !(told && problem === 'refused') && (
        <div class="problem" role="alert">
          <p>{strings.problem(choiceStrings.problems[problem])}</p>
          {problem === 'changed' && (
            <button type="button" onClick={() => acts.onTakeKept(id)}>
              {strings.takeKept}
            </button>
          )}
          {(problem === 'changed' || problem === 'missing') && (
            <button type="button" disabled={full} onClick={() => acts.onDuplicate(item)}>
              {strings.keepMine}
            </button>
          )}
        </div>
      )}
      <EntryButtons item={item} open={open} full={full} {...acts} />
      {open && <InstrumentForm value={value} onChange={(change) => acts.onEdit(id, change)} />}
    </li>
  );
}

function EntryButtons({ item, open, full, ...acts }: EntryActs & Pick<EntryProps, 'item' | 'open' | 'full'>) {
  const { id, value } = item;
  const name = isolated(nameOf(value));
  return (
    <p class="shelf-actions">
      <button
        type="button"
        class="plain"
        id={editButtonId(id)}
        aria-expanded={open}
        aria-label={open ? strings.closeOf(name) : strings.editOf(name)}
        onClick={() => acts.onOpen(open ? undefined : id)}
      >
        {open ? strings.close : strings.edit}
      </button>
      <button
        type="button"
        class="plain"
        disabled={full}
        aria-label={strings.duplicateOf(name)}
        onClick={() => acts.onDuplicate(item)}
      >
        {strings.duplicate}
      </button>
      <button
        type="button"
        class="plain"
        aria-label={strings.removeOf(name)}
        onClick={() => acts.onRemove(id)}
      >
        {strings.remove}
      </button>
    </p>
  );
}
