export interface StageAnswersProps {
  readonly caption: string;
  readonly answers: readonly { readonly id: string; readonly figure: string; readonly words: string }[];
}

/** The state of a figure as a table, for paper: on the wall the figure has to be enough. */
export function StageAnswers({ caption, answers }: StageAnswersProps) {
  return (
    <table class="stage-states">
      <caption>{caption}</caption>
      <tbody>
        {answers.map(({ id, figure, words }) => (
          <tr key={id}>
            <th scope="row">{figure}</th>
            <td>{words}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
