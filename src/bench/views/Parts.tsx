import type { Results } from '../use-results.ts';
import { BehindParts } from './BehindParts.tsx';
import { HelpPart } from './HelpPart.tsx';
import { RecordPart } from './RecordPart.tsx';
import { SimulationPart } from './SimulationPart.tsx';
import { TakePart } from './TakePart.tsx';
import { type DefenceProps, ValidityPart } from './ValidityPart.tsx';

/** What the parts below the form are drawn from. */
export interface PartsProps extends DefenceProps {
  readonly all: Results['all'];
  /** Whether that is a result of this sheet: one that was never usable has none, and another sheet's is not shown. */
  readonly own: boolean;
  /** Version of the site, which what is taken along says. */
  readonly version: string;
  /** What stands on the bench at this moment: what the parts are drawn from may be a breath older. */
  readonly standing: () => Pick<PartsProps, 'entries' | 'problems' | 'measurement' | 'shown'>;
}

/** Everything below the form: what stands behind the result, what is taken along, what defends it, and the record. */
export function Parts({ all, own, version, standing, ...defence }: PartsProps) {
  const { entries, measurement, shown } = defence;
  return (
    <>
      {own && <BehindParts shown={shown} all={all} measurement={measurement} />}
      <TakePart {...defence} own={own} version={version} standing={standing} />
      {own && (
        <>
          <ValidityPart {...defence} />
          <HelpPart entries={entries} shown={shown} />
          <SimulationPart measurement={measurement} shown={shown} />
        </>
      )}
      <RecordPart {...defence} own={own} />
    </>
  );
}
