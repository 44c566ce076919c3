import { Residuals } from '../../figures/Residuals.tsx';
import { PlainAnswers } from '../../widgets/parts/PlainAnswers.tsx';
import type { Calibration } from '../calibration.ts';
import { residualsOf } from '../figure.ts';
import type { Outcome } from '../outcome.ts';
import type { PadFound } from '../pad.ts';
import { partAnswers, partNotes } from '../part-words.ts';
import { resultStrings as strings } from '../result-strings.ts';
import { agreementOf, answersOf, mainCorrection, notesOf, summariseCalibration } from '../result-words.ts';
import { budgetLines } from '../tables.ts';
import { Budget, Places } from './Tables.tsx';

/** What came out, or why nothing did. */
export function ResultPart({ outcome }: { readonly outcome: Outcome }) {
  if (outcome.kind === 'none')
    return (
      <p class="caution">
        {strings.faults[outcome.fault]} {outcome.because}
      </p>
    );
  if (outcome.kind === 'part') return <PartResult part={outcome.part} />;
  return <CalibrationResult calibration={outcome.calibration} />;
}

function PartResult({ part }: { readonly part: PadFound }) {
  return (
    <>
      <PlainAnswers answers={partAnswers(part)} />
      {partNotes(part).map(({ text, caution }) => (
        <p key={text} class={caution ? 'caution' : 'measure'}>
          {text}
        </p>
      ))}
      <Budget lines={budgetLines(part.propagation)} />
    </>
  );
}

function CalibrationResult({ calibration }: { readonly calibration: Calibration }) {
  const agreement = agreementOf(calibration);
  return (
    <>
      <PlainAnswers answers={answersOf(calibration)} />
      <Figure calibration={calibration} />
      {notesOf(calibration).map((sentence) => (
        <p key={sentence} class="measure">
          {sentence}
        </p>
      ))}
      {calibration.line && <Places calibration={calibration} />}
      {agreement !== undefined && (
        <>
          <h3>{strings.agreement.heading}</h3>
          <p class="measure">
            {agreement} {strings.agreement.note}
          </p>
        </>
      )}
      <Budget lines={budgetLines(mainCorrection(calibration).propagation)} />
    </>
  );
}

function Figure({ calibration }: { readonly calibration: Calibration }) {
  const { figure } = strings;
  const { along } = calibration.checked;
  const alone = calibration.line === undefined;
  const byPlace = along === 'level' ? figure.alongLevel : figure.alongFrequency;
  const words = { up: figure.up, along: alone ? figure.alongRounds : byPlace };
  const caption = alone ? figure.roundsWords : figure.lineWords;
  const drawn = residualsOf(calibration);
  return (
    <figure class="residuals">
      <div class="plot-place plot-place-page">
        {(['wide', 'narrow'] as const).map((frame) => (
          <Residuals
            key={frame}
            frame={frame}
            {...drawn}
            words={words}
            name={figure.name}
            description={summariseCalibration(calibration)}
          />
        ))}
      </div>
      <figcaption class="measure small">{caption}</figcaption>
    </figure>
  );
}
