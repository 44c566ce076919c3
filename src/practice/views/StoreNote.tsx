import { progressStrings as strings } from '../progress-strings.ts';
import type { Book } from '../use-book.ts';

/** Says why answers are not noted, where they are not. */
export const StoreNote = ({ book }: { readonly book: Book }) => (
  <p class="small" role="status">
    {book.problem !== undefined && `${strings.notKept}${strings.problems[book.problem]}`}
  </p>
);
