import type { ComponentChildren } from 'preact';
import type { LineBandWords } from '../../figures/LineBand.tsx';
import type { LineBandProps } from '../../figures/line-band.layout.ts';
import { FieldsWidget, type FieldsWidgetProps } from './FieldsWidget.tsx';
import type { PlainFields } from './fields.ts';
import { LineBandFigure } from './LineBandFigure.tsx';
import type { PartRow } from './method-words.ts';
import { PartsTable } from './PartsTable.tsx';

export interface MethodWidgetProps<Of extends PlainFields>
  extends Omit<FieldsWidgetProps<Of>, 'kind' | 'figure' | 'between' | 'below' | 'words'> {
  readonly drawn: Omit<LineBandProps, 'frame'>;
  /** Name of the field that the knob pulls. */
  readonly pulls: keyof Of & string;
  readonly parts: readonly PartRow[];
  /** What the load, and whoever touches it, have to reckon with. */
  readonly caution: ComponentChildren;
  readonly words: FieldsWidgetProps<Of>['words'] & {
    readonly name: string;
    readonly description: (summary: string) => string;
    readonly axes: LineBandWords;
    readonly cautionHead: string;
  };
}

/** A method with what it may be wrong by: figure, answers, caution, settings, and the table of its parts. */
export function MethodWidget<Of extends PlainFields>({
  drawn,
  pulls,
  parts,
  caution,
  ...rest
}: MethodWidgetProps<Of>) {
  const { send, words, summary } = rest;
  return (
    <FieldsWidget
      {...rest}
      kind="plain-widget"
      figure={
        <LineBandFigure
          figure={drawn}
          words={words.axes}
          name={words.name}
          description={words.description(summary)}
          onGrasp={() => send({ type: 'grasp' })}
          onPull={(value) => send({ type: 'set', name: pulls, value })}
          onRelease={() => send({ type: 'release' })}
          onCancel={() => send({ type: 'cancel' })}
        />
      }
      between={
        <p class="small">
          <strong>{words.cautionHead}</strong> {caution}
        </p>
      }
      below={<PartsTable rows={parts} />}
    />
  );
}
