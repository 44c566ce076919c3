import type { ComponentChildren } from 'preact';
import type { PlainFields } from './fields.ts';
import { LineBandWidget, type LineBandWidgetProps } from './LineBandWidget.tsx';
import type { PartRow } from './method-words.ts';
import { PartsTable } from './PartsTable.tsx';

interface MethodWidgetProps<Of extends PlainFields>
  extends Omit<LineBandWidgetProps<Of>, 'between' | 'below' | 'words'> {
  readonly parts: readonly PartRow[];
  /** What the load, and whoever touches it, have to reckon with. */
  readonly caution: ComponentChildren;
  readonly words: LineBandWidgetProps<Of>['words'] & { readonly cautionHead: string };
}

/** A method with what it may be wrong by: figure, answers, caution, settings, and the table of its parts. */
export function MethodWidget<Of extends PlainFields>({ parts, caution, ...rest }: MethodWidgetProps<Of>) {
  return (
    <LineBandWidget
      {...rest}
      between={
        <p class="small">
          <strong>{rest.words.cautionHead}</strong> {caution}
        </p>
      }
      below={<PartsTable rows={parts} />}
    />
  );
}
