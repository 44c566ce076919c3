import type { LineBandWords } from '../../figures/LineBand.tsx';
import type { LineBandProps } from '../../figures/line-band.layout.ts';
import { FieldsWidget, type FieldsWidgetProps } from './FieldsWidget.tsx';
import type { PlainFields } from './fields.ts';
import { LineBandFigure } from './LineBandFigure.tsx';
import { pulling } from './pulling.ts';

export interface LineBandWidgetProps<Of extends PlainFields>
  extends Omit<FieldsWidgetProps<Of>, 'kind' | 'figure' | 'words'> {
  /** Makes what is drawn. */
  readonly draw: () => Omit<LineBandProps, 'frame'>;
  /** Name of the field that the knob pulls. */
  readonly pulls: keyof Of & string;
  readonly axes: LineBandWords;
  readonly words: FieldsWidgetProps<Of>['words'] & {
    readonly name: string;
    readonly description: (summary: string) => string;
  };
}

/** A widget of plain fields whose figure is a line over a band, with a knob for one of them. */
export function LineBandWidget<Of extends PlainFields>({
  draw,
  pulls,
  axes,
  ...rest
}: LineBandWidgetProps<Of>) {
  const { send, words, summary } = rest;
  return (
    <FieldsWidget
      {...rest}
      kind="plain-widget"
      figure={
        <LineBandFigure
          draw={draw}
          words={axes}
          name={words.name}
          description={words.description(summary)}
          {...pulling(send)}
          onPull={(value) => send({ type: 'set', name: pulls, value })}
        />
      }
    />
  );
}
