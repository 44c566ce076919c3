import type { NumberSpec } from '../address/field-spec.ts';
import type { LineBandWords } from '../figures/LineBand.tsx';
import type { LineBandProps } from '../figures/line-band.layout.ts';
import type { UnitName } from '../text/units.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import type { FieldsAction, PlainFields } from '../widgets/parts/fields.ts';
import { InTurn } from '../widgets/parts/InTurn.tsx';
import { LineBandFigure } from '../widgets/parts/LineBandFigure.tsx';
import type { PlainAnswersProps } from '../widgets/parts/PlainAnswers.tsx';
import { pulling } from '../widgets/parts/pulling.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';

export interface StageLineBandProps<Of extends PlainFields> {
  readonly send: (action: FieldsAction<Of>) => void;
  /** Makes what is drawn. */
  readonly draw: () => Omit<LineBandProps, 'frame'>;
  /** The number that one press changes. */
  readonly field: NumberSpec;
  /** Name of the number that the knob pulls, and of the one that a press changes where that is another. */
  readonly pulls: keyof Of & string;
  readonly presses?: keyof Of & string;
  readonly unit: UnitName;
  readonly value: number;
  readonly press: number;
  readonly onReset: () => void;
  readonly answers: PlainAnswersProps['answers'];
  /** Place of the answer that stands in large; the first unless given. */
  readonly leads?: number;
  /** What stands in large, where the whole answer and its ghost have no room beside each other. */
  readonly says?: string | undefined;
  readonly summary: string;
  readonly words: {
    readonly name: string;
    readonly description: (summary: string) => string;
    readonly axes: LineBandWords;
  };
}

/** A line with its band on the wall, one number to be changed in one press. */
export function StageLineBand<Of extends PlainFields>(props: StageLineBandProps<Of>) {
  const { send, words, answers, summary, pulls, presses = pulls, leads = 0 } = props;
  const set = (name: string, value: number): void => send({ type: 'set', name, value });
  return (
    <div class="stage-band">
      <InTurn>
        <LineBandFigure
          place="stage"
          draw={props.draw}
          words={words.axes}
          name={words.name}
          description={words.description(summary)}
          {...pulling(send)}
          onPull={(value) => set(pulls, value)}
        />
      </InTurn>
      <StageWhatIf
        field={props.field}
        unit={props.unit}
        value={props.value}
        press={props.press}
        onValue={(value) => set(presses, value)}
        onReset={props.onReset}
      />
      <StageStates
        answer={props.says ?? answers[leads]?.figure ?? ''}
        rows={answers.map(({ figure, words: text }) => ({ name: figure, text }))}
      />
      <Announcer summary={summary} />
    </div>
  );
}
