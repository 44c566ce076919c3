import { useMemo, useReducer } from 'preact/hooks';
import { inDirection, isolated } from '../text/isolate.ts';
import { AddressProblems } from '../widgets/parts/AddressProblems.tsx';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { breathe } from '../widgets/parts/breathe.ts';
import { InTurn } from '../widgets/parts/InTurn.tsx';
import { useDecimal } from '../widgets/parts/use-decimal.ts';
import type { Checked } from './checked.ts';
import { borrowIn, spelledBorrow } from './decimal.ts';
import { type Outcome, outcomeOf } from './outcome.ts';
import { summarisePart } from './part-words.ts';
import { resultStrings } from './result-strings.ts';
import { summariseCalibration } from './result-words.ts';
import { preparedBorrow } from './state.ts';
import { strings } from './strings.ts';
import { useFragment } from './use-fragment.ts';
import { Form } from './views/Form.tsx';
import { Problems } from './views/Problems.tsx';
import { ResultPart } from './views/ResultPart.tsx';
import { SavePart } from './views/SavePart.tsx';

const codec = async () => {
  const { borrowFragment: write, readBorrowFragment: read } = await import('./address.ts');
  return { write, read };
};

/** What the page opens with, worked out as the script is read, in turns between which the page answers: to wake it then only takes drawing. */
const prepared = preparedBorrow();
await breathe();
const opening = await workedOutInTurns(prepared.checked);

/**
 * Borrowing a calibration. After using it a reader has a correction for an instrument of their own, or the attenuation of a pad or cable,
 * knows what it is uncertain by and how much of that came with the lender, and can say what such a comparison cannot do.
 */
export default function Borrow({ instruments }: { readonly instruments: string }) {
  const decimal = useDecimal();
  const [state, send] = useReducer(borrowIn(decimal), prepared);
  const formState = useMemo(() => spelledBorrow(state, decimal), [state, decimal]);
  const { entries, checked, problems } = state;
  const tooLong = useFragment({
    entries,
    codec,
    open: (opened, told) => send({ type: 'open', entries: opened, problems: told }),
    refuse: (told) => send({ type: 'refuse', problems: told }),
  });
  const { outcome, summary } = useMemo(
    () => (checked === prepared.checked ? opening : workedOut(checked)),
    [checked],
  );
  const isPart = checked.kind !== 'alternation';
  const { heading, headingPart, unnamed, unnamedPart, cannot } = resultStrings;
  const { lender, date, conditions } = checked.notes;
  const title = isolated(checked.notes.name) || (isPart ? unnamedPart : unnamed);
  return (
    <div class="bench borrow">
      <AddressProblems problems={[...state.addressProblems, ...(tooLong ? [strings.tooLong] : [])]} />
      <p class="caution">
        <strong>{strings.caution}</strong>
      </p>
      <section class="bench-result" aria-labelledby="result">
        <h2 id="result">{`${title}: ${(isPart ? headingPart : heading).toLowerCase()}`}</h2>
        <p class="record">
          {[isolated(lender), isolated(date), inDirection(conditions)].filter(Boolean).join(' · ')}
        </p>
        <Problems problems={problems} />
        <InTurn>
          <ResultPart outcome={outcome} />
        </InTurn>
      </section>
      <Form state={formState} send={send} />
      <InTurn>
        <SavePart
          outcome={outcome}
          name={checked.notes.name}
          dated={checked.notes.date !== ''}
          usable={problems.length === 0}
          list={instruments}
        />
      </InTurn>
      <section aria-labelledby="cannot">
        <h2 id="cannot">{cannot.heading}</h2>
        <ul class="measure">
          {cannot[checked.kind].map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </section>
      <Announcer
        summary={problems.length > 0 ? `${strings.problems(problems.length)}. ${strings.stale}` : summary}
      />
    </div>
  );
}

function workedOut(checked: Checked) {
  const outcome = outcomeOf(checked);
  return { outcome, summary: summarise(outcome) };
}

async function workedOutInTurns(checked: Checked): Promise<ReturnType<typeof workedOut>> {
  const outcome = outcomeOf(checked);
  await breathe();
  return { outcome, summary: summarise(outcome) };
}

function summarise(outcome: Outcome): string {
  if (outcome.kind === 'none') return resultStrings.faults[outcome.fault];
  return outcome.kind === 'part' ? summarisePart(outcome.part) : summariseCalibration(outcome.calibration);
}
