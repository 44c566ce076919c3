import { Problem } from '../../widgets/parts/Problem.tsx';
import { ComparedTable } from '../../widgets/simulation/ComparedTable.tsx';
import type { SimulatedSheet } from '../../widgets/simulation/messages.ts';
import { SimulationRun } from '../../widgets/simulation/SimulationRun.tsx';
import { strings as simulationStrings } from '../../widgets/simulation/strings.ts';
import type { NumberedPoint, PointResult } from '../results/point-result.ts';
import { wholeInterval } from '../results/result.ts';
import { simulationWords } from '../words/simulation-words.ts';
import { tryStrings as strings } from '../words/try-strings.ts';
import type { DefenceProps } from './ValidityPart.tsx';

/** Runs the simulation of the shown point, and sets its interval beside the computed ones of the state it was started for. */
export function SimulationTry({ measurement, shown }: Pick<DefenceProps, 'measurement' | 'shown'>) {
  const stale = (about: PointResult): boolean => about !== shown;
  if (!shown.inRange) return <p>{strings.outOfRange}</p>;
  return (
    <div class="simulation">
      <SimulationRun
        of={{ measurement, point: shown.point.id }}
        about={shown}
        note={(about) => <Problem>{stale(about) && strings.stale}</Problem>}
      >
        {(result, about) => <Compared result={result} about={about} />}
      </SimulationRun>
    </div>
  );
}

function Compared({ result, about }: { result: SimulatedSheet; about: NumberedPoint }) {
  const { chain } = about.result;
  const whole = wholeInterval(chain);
  return (
    <>
      <ComparedTable
        ways={[
          { name: simulationStrings.simulated, interval: result.symmetric },
          ...(whole === undefined ? [] : [{ name: simulationStrings.whole, interval: whole }]),
          { name: simulationStrings.propagated, interval: chain.result.propagation.interval },
        ]}
      />
      {simulationWords('shown', result, about).map((sentence) => (
        <p key={sentence} class="measure">
          {sentence}
        </p>
      ))}
    </>
  );
}
