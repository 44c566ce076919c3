import { partStrings as strings } from '../part-strings.ts';
import type { Fetched } from './use-fetched.ts';

interface FetchingProps extends Pick<Fetched<unknown>, 'failed' | 'again'> {
  /** What is told while it is on its way. */
  readonly waiting?: string;
  readonly class?: string;
}

/** Stands in the place of a part that is not there yet; where it could not be fetched, the reader may ask again. */
export function Fetching({ failed, again, waiting = strings.fetching, ...attributes }: FetchingProps) {
  return (
    <p {...attributes} role="status">
      {failed ? `${strings.failed} ` : waiting}
      {failed && (
        <button type="button" onClick={again}>
          {strings.again}
        </button>
      )}
    </p>
  );
}
