import { quantityText } from '../text/quantity-text.ts';
import { amountText } from '../text/statement-text.ts';
import { LineFigure } from '../widgets/level-line/LineFigure.tsx';
import { VALUE } from '../widgets/level-line/spec.ts';
import { preparedLine, reduceLine } from '../widgets/level-line/state.ts';
import { strings } from '../widgets/level-line/strings.ts';
import { answersOf, summarise } from '../widgets/level-line/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { readerOf } from '../widgets/parts/read-amount.ts';
import { useMirrored } from './mirror.ts';
import { StageAnswer } from './StageAnswer.tsx';
import { StageAnswers } from './StageAnswers.tsx';
import { WhatIf } from './WhatIf.tsx';

/** One press of plus or minus, in dB. */
const PRESS_DB = 1;
/** The tile whose number the speaker changes: the first pad. */
const CHANGED = 1;
const read = readerOf({ kind: 'gain', min: VALUE.min, max: VALUE.max, decimals: 0 });

/** The line of tiles on the wall, the first pad to be changed in one press; tiles can be pulled to other places. */
export default function StageLine() {
  const [state, send] = useMirrored(reduceLine, preparedLine());
  const changed = state.tiles.find(({ id }) => id === `t${CHANGED}`);
  const set = (value: number): void => send({ type: 'value', id: changed?.id ?? '', value });
  const [answer] = answersOf(state.tiles);
  return (
    <div class="stage-band">
      <LineFigure state={state} send={send} place="stage" />
      {answer && <StageAnswer answer={answer.figure} />}
      <WhatIf
        legend={strings.firstPad}
        press={quantityText('spoken', { value: PRESS_DB, decimals: 0, unit: 'dB' })}
        field={{
          label: strings.firstPad,
          shown: amountText(changed?.value ?? 0),
          unit: 'dB',
          read,
          onValue: set,
        }}
        onLess={() => set((changed?.value ?? 0) - PRESS_DB)}
        onMore={() => set((changed?.value ?? 0) + PRESS_DB)}
        onReset={() => send({ type: 'reset' })}
      />
      <StageAnswers caption={strings.name} answers={answersOf(state.tiles)} />
      <Announcer summary={summarise(state.tiles)} />
    </div>
  );
}
