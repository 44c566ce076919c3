import { helpPartStrings as strings } from '../help/help-part-strings.ts';
import { FetchedPart } from './FetchedPart.tsx';
import type { DefenceProps } from './ValidityPart.tsx';

const load = () => import('./HelpFound.tsx');

/** What would make the shown point's result surer; worked out when unfolded. */
export function HelpPart({ entries, shown }: Pick<DefenceProps, 'entries' | 'shown'>) {
  return (
    <FetchedPart id="help" {...strings} load={load}>
      {({ HelpFound }, open) => <HelpFound links={entries.links} shown={shown} open={open} />}
    </FetchedPart>
  );
}
