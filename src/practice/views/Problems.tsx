import { strings } from '../strings.ts';

interface ProblemsProps {
  /** What was wrong with the address. */
  readonly problems: readonly string[];
  /** Whether something could not be fetched. */
  readonly isLost: boolean;
}

/** Sentences on what went wrong before anything was answered. */
export const Problems = ({ problems, isLost }: ProblemsProps) => (
  // there before it says anything: what comes together with its words is not heard everywhere
  <div role="status">
    {[...problems, ...(isLost ? [strings.round.lost] : [])].map((problem) => (
      <p key={problem} class="problem">
        {problem}
      </p>
    ))}
  </div>
);
