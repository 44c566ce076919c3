import { useEffect, useReducer } from 'preact/hooks';
import { Fetching } from '../bench/views/Fetching.tsx';
import { useFetched } from '../bench/views/use-fetched.ts';
import { useFragment } from '../borrow/use-fragment.ts';
import { AddressProblems } from '../widgets/parts/AddressProblems.tsx';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { InTurn } from '../widgets/parts/InTurn.tsx';
import { UndoButtons } from '../widgets/parts/UndoButtons.tsx';
import { needsDecoder } from './read-row.ts';
import { preparedInTurns, reduceCompare } from './state.ts';
import { strings } from './strings.ts';
import { KeptPart } from './views/KeptPart.tsx';
import { ResultPart } from './views/ResultPart.tsx';
import { type PartProps, SharedPart, SheetsPart } from './views/SheetsPart.tsx';
import { summarise } from './words.ts';

const codec = async () => {
  const { compareFragment: write, readCompareFragment: read } = await import('./address.ts');
  return { write, read };
};

const loadDecoder = () => import('../bench/address/address.ts');

/** What the page opens with, worked out as the script is read: to wake the page then only takes drawing. */
const opening = await preparedInTurns();

/**
 * Measurements of one transmitter side by side. After using it a reader knows whether they agree once what they share is taken out, what
 * they say together, and that agreement proves neither of them right.
 */
export default function Compare() {
  const [state, send] = useReducer(reduceCompare, opening);
  const { entries, comparison, addressProblems } = state;
  const tooLong = useFragment({
    entries,
    codec,
    open: (opened, problems) => send({ type: 'open', entries: opened, problems }),
    refuse: (problems) => send({ type: 'refuse', problems }),
  });
  const { module, failed, again } = useFetched(loadDecoder, entries.rows.some(needsDecoder));
  useEffect(() => {
    if (module !== undefined) send({ type: 'decoder', decode: module.decodeEntries });
  }, [module]);
  return (
    <div class="bench compare">
      <AddressProblems problems={[...addressProblems, ...(tooLong ? [strings.tooLong] : [])]} />
      <p class="caution">
        <strong>{strings.caution}</strong>
      </p>
      <section class="bench-result" aria-labelledby="result">
        <h2 id="result">{strings.heading}</h2>
        <InTurn>
          <ResultPart comparison={comparison} />
        </InTurn>
      </section>
      <section class="bench-form" aria-labelledby="entries">
        <h2 id="entries">{strings.form}</h2>
        <UndoButtons state={state} send={send} words={strings} alone />
        <InTurn>
          <SharedPart state={state} send={send} />
        </InTurn>
        <InTurn>
          <SheetsPart state={state} send={send} />
        </InTurn>
        {failed && <Fetching failed={failed} again={again} />}
        <InTurn>
          <KeptPart state={state} send={send} />
        </InTurn>
        <Begin send={send} />
      </section>
      <section aria-labelledby="cannot">
        <h2 id="cannot">{strings.cannot.heading}</h2>
        <ul class="measure">
          {strings.cannot.list.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </section>
      <Announcer summary={summarise(comparison)} />
    </div>
  );
}

function Begin({ send }: Pick<PartProps, 'send'>) {
  return (
    <fieldset class="bench-part needs-script">
      <legend>{strings.begin}</legend>
      <p class="point-actions">
        <button type="button" class="plain" onClick={() => send({ type: 'demonstration' })}>
          {strings.demonstration}
        </button>
        <button type="button" class="plain" onClick={() => send({ type: 'fresh' })}>
          {strings.fresh}
        </button>
      </p>
    </fieldset>
  );
}
