import type { ComponentChildren } from 'preact';
import { strings } from './strings.ts';

/** The answer under a figure on the wall; on paper the same with what was set, as a table. */
export function StageStates({
  answer,
  rows,
  children,
}: {
  /** The one number that the slide is about. */
  answer: string;
  /** What was set and what came of it, name by name. */
  rows: readonly { readonly name: string; readonly text: string }[];
  children?: ComponentChildren;
}) {
  return (
    <>
      <p class="stage-answer">{answer}</p>
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
