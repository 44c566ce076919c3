import { simulationPartStrings as strings } from '../words/simulation-strings.ts';
import { FetchedPart } from './FetchedPart.tsx';
import type { DefenceProps } from './ValidityPart.tsx';

const load = () => import('./SimulationTry.tsx');

/** The shown point by trials, on request, beside the page. */
export function SimulationPart({ measurement, shown }: Pick<DefenceProps, 'measurement' | 'shown'>) {
  return (
    <FetchedPart id="simulation" {...strings} load={load}>
      {({ SimulationTry }) => <SimulationTry measurement={measurement} shown={shown} />}
    </FetchedPart>
  );
}
