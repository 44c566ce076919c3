import { checkSentences } from '../check-export.ts';
import { entriesOf } from '../entries-of.ts';
import { sheetAddress } from '../use-address.ts';
import type { Results } from '../use-results.ts';
import { BehindParts } from './BehindParts.tsx';
import { HelpPart } from './HelpPart.tsx';
import { RecordPart } from './RecordPart.tsx';
import { SimulationPart } from './SimulationPart.tsx';
import { type DefenceProps, ValidityPart } from './ValidityPart.tsx';

/** What the parts below the form are drawn from. */
export type PartsProps = DefenceProps & { readonly all: Results['all'] };

/** Everything below the form: what stands behind the result, what defends it, and the record. */
export function Parts({ all, ...defence }: PartsProps) {
  const { entries, measurement, problems, shown } = defence;
  return (
    <>
      <BehindParts
        shown={shown}
        all={all}
        measurement={measurement}
        entries={entries}
        checks={() => checkSentences(entries, measurement, shown)}
        link={() => sheetAddress(problems.length > 0 ? entriesOf(measurement) : entries)}
      />
      <ValidityPart {...defence} />
      <HelpPart entries={entries} shown={shown} />
      <SimulationPart measurement={measurement} shown={shown} />
      <RecordPart {...defence} />
    </>
  );
}
