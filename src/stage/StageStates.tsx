import type { ComponentChildren } from 'preact';
import { StageAnswer } from './StageAnswer.tsx';
import { strings } from './strings.ts';

/** The answer under a figure on the wall; on paper the same with what was set, as a table. */
export function StageStates({
  answer,
  ghost = answer,
  rows,
  children,
}: {
  /** The one number that the slide is about. */
  answer: string;
  /** What of it its ghost keeps, where the whole would be too long. */
  ghost?: string;
  /** What was set and what came of it, name by name. */
  rows: readonly { readonly name: string; readonly text: string }[];
  children?: ComponentChildren;
}) {
  return (
    <>
      <StageAnswer answer={answer} ghost={ghost} />
      {children}
      <table class="stage-states">
        <caption>{strings.now}</caption>
        <tbody>
          {rows.map(({ name, text }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{text}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
