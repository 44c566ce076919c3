import { quantityText } from '../text/quantity-text.ts';
import { amountText } from '../text/statement-text.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { pulling } from '../widgets/parts/pulling.ts';
import { RulersFigure } from '../widgets/parts/RulersFigure.tsx';
import { readerOf } from '../widgets/parts/read-amount.ts';
import { ratioFigure } from '../widgets/ratio-ruler/rulers.ts';
import { GAIN, PREPARED_DB } from '../widgets/ratio-ruler/spec.ts';
import { initialState, reduceRatio } from '../widgets/ratio-ruler/state.ts';
import { strings } from '../widgets/ratio-ruler/strings.ts';
import { answersOf, summarise } from '../widgets/ratio-ruler/words.ts';
import { useMirrored } from './mirror.ts';
import { StageAnswers } from './StageAnswers.tsx';
import { WhatIf } from './WhatIf.tsx';

/** One press of plus or minus, in dB. */
const PRESS_DB = 1;
const read = readerOf({ kind: 'gain', min: GAIN.min, max: GAIN.max, decimals: 0 });

/** The ruler of ratios on the wall, with the decibels to be changed in one press. */
export default function StageRatio() {
  const [state, send] = useMirrored(reduceRatio, initialState(PREPARED_DB));
  const summary = summarise(state);
  const set = (gainDb: number): void => send({ type: 'set', gainDb });
  return (
    <div class="stage-band">
      <RulersFigure
        place="stage"
        {...ratioFigure(state)}
        name={strings.name}
        description={strings.description(summary)}
        {...pulling(send)}
        onPull={(_, gainDb) => send({ type: 'pull', gainDb })}
      />
      <WhatIf
        legend={strings.decibels}
        press={quantityText('spoken', { value: PRESS_DB, decimals: 0, unit: 'dB' })}
        field={{
          label: strings.fieldDb,
          shown: amountText(state.gainDb),
          unit: 'dB',
          read,
          onValue: set,
        }}
        onLess={() => set(state.gainDb - PRESS_DB)}
        onMore={() => set(state.gainDb + PRESS_DB)}
        onReset={() => send({ type: 'reset', gainDb: PREPARED_DB })}
        answer={answersOf(state)[0]?.figure}
      />
      <StageAnswers caption={strings.name} answers={answersOf(state)} />
      <Announcer summary={summary} />
    </div>
  );
}
