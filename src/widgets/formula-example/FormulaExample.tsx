import { useId, useRef, useState } from 'preact/hooks';
import type { ComputeFunction, ExampleNumbers } from '../../formulas/index.ts';
import { fieldText } from '../../text/field-text.ts';
import { pocketText } from '../../text/pocket-text.ts';
import { Problem } from '../parts/Problem.tsx';
import { useDecimal } from '../parts/use-decimal.ts';
import { entriesOf, readEntries } from './state.ts';
import { strings } from './strings.ts';

export interface FormulaExampleProps {
  readonly id: ComputeFunction;
  readonly given: ExampleNumbers;
  /** What each number is, by the name of its parameter. */
  readonly labels: Readonly<Record<string, string>>;
  readonly result: string;
}

/**
 * A formula with numbers that can be changed. After using it a reader has checked their own arithmetic against the function
 * that computes everything here. The computation is fetched when a number is first changed.
 */
export default function FormulaExample({ id, given, labels, result }: FormulaExampleProps) {
  const [written] = useState(() => entriesOf(given));
  const [entries, setEntries] = useState(written);
  const decimal = useDecimal();
  const [outcome, setOutcome] = useState<{ readonly text: string; readonly problem?: string }>({
    text: result,
  });
  const latest = useRef(0);
  const base = useId();
  const edit = async (name: string, text: string): Promise<void> => {
    const next = { ...entries, [name]: text };
    setEntries(next);
    latest.current += 1;
    const turn = latest.current;
    const shown = await outcomeOf(id, given, next);
    if (turn === latest.current) setOutcome(shown);
  };
  const { text, problem } = outcome;
  return (
    // a page has many of these: each begins with the heading of its row
    <fieldset class="formula-example" aria-labelledby={`${id} ${base}-legend`}>
      <legend id={`${base}-legend`}>{strings.legend}</legend>
      <p class="print-only">
        {Object.keys(given)
          .map((name) => `${labels[name] ?? name}: ${entries[name]}`)
          .join('. ')}
      </p>
      {Object.entries(given).map(([name, value]) => (
        <div key={name} class="formula-entry needs-script">
          <label for={`${base}${name}`}>
            {labels[name] ?? name}
            {Array.isArray(value) && ` (${strings.several})`}
          </label>
          <input
            id={`${base}${name}`}
            type="text"
            autoComplete="off"
            spellcheck={false}
            value={entries[name] === written[name] ? fieldText(entries[name] ?? '', decimal) : entries[name]}
            aria-invalid={problem === undefined ? undefined : 'true'}
            aria-describedby={`${base}-problem`}
            onInput={(event) => edit(name, event.currentTarget.value)}
          />
        </div>
      ))}
      <p class="formula-result" role="status">
        {problem === undefined ? `${strings.result}: ${text}` : ''}
      </p>
      <Problem id={`${base}-problem`}>{problem}</Problem>
    </fieldset>
  );
}

async function outcomeOf(
  id: ComputeFunction,
  given: ExampleNumbers,
  entries: Readonly<Record<string, string>>,
) {
  const read = readEntries(given, entries);
  if (!read.ok) return { text: '', problem: read.problem };
  const module = await import('./run.ts').catch(() => undefined);
  if (module === undefined) return { text: '', problem: strings.failed };
  try {
    return { text: pocketText(module.run(id, read.numbers)) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { text: '', problem: strings.refused(error.message) };
  }
}
