import { partStrings as strings } from '../part-strings.ts';

/** Tells that what computes the results could not be fetched, and lets the reader ask for it again. */
export function FetchAgain({ again }: { again: () => void }) {
  return (
    <p role="status" class="problem">
      {strings.noAnswers}{' '}
      <button type="button" onClick={again}>
        {strings.again}
      </button>
    </p>
  );
}
