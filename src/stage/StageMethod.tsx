import type { NumberSpec } from '../address/field-spec.ts';
import type { LineBandWords } from '../figures/LineBand.tsx';
import type { LineBandProps } from '../figures/line-band.layout.ts';
import type { UnitName } from '../text/units.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import type { FieldsAction, PlainFields } from '../widgets/parts/fields.ts';
import { LineBandFigure } from '../widgets/parts/LineBandFigure.tsx';
import type { Answer } from '../widgets/parts/method-words.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';

export interface StageMethodProps<Of extends PlainFields> {
  readonly send: (action: FieldsAction<Of>) => void;
  readonly drawn: Omit<LineBandProps, 'frame'>;
  /** The field that the knob pulls and that one press changes. */
  readonly field: NumberSpec;
  readonly pulls: keyof Of & string;
  readonly unit: UnitName;
  readonly value: number;
  readonly press: number;
  readonly onReset: () => void;
  readonly answers: readonly Answer[];
  readonly summary: string;
  readonly words: {
    readonly name: string;
    readonly description: (summary: string) => string;
    readonly axes: LineBandWords;
  };
}

/** A method with its band on the wall, one number to be changed in one press. */
export function StageMethod<Of extends PlainFields>(props: StageMethodProps<Of>) {
  const { send, words, answers, summary } = props;
  const set = (value: number): void => send({ type: 'set', name: props.pulls, value });
  return (
    <div class="stage-band">
      <LineBandFigure
        place="stage"
        figure={props.drawn}
        words={words.axes}
        name={words.name}
        description={words.description(summary)}
        onGrasp={() => send({ type: 'grasp' })}
        onPull={set}
        onRelease={() => send({ type: 'release' })}
        onCancel={() => send({ type: 'cancel' })}
      />
      <StageWhatIf
        field={props.field}
        unit={props.unit}
        value={props.value}
        press={props.press}
        onValue={set}
        onReset={props.onReset}
      />
      <StageStates
        answer={answers[0]?.figure ?? ''}
        rows={answers.map(({ figure, words: text }) => ({ name: figure, text }))}
      />
      <Announcer summary={summary} />
    </div>
  );
}
