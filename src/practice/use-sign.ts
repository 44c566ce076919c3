import { useEffect, useState } from 'preact/hooks';
import type { ShownSitting } from './shown.ts';

/** What makes questions and texts read with the reader's decimal sign. */
export interface Signed {
  readonly seen: (sitting: ShownSitting) => ShownSitting;
  readonly say: (text: string) => string;
}

/** With a point, as questions and pages are written. */
export const AS_WRITTEN: Signed = { seen: (sitting) => sitting, say: (text) => text };

/** As the last question on this page was shown, so that the next does not begin with a point. */
let latest = AS_WRITTEN;

/** The reader's decimal sign for questions: a point until the page has woken and its choice was fetched. */
export function useSign(): Signed {
  const [signed, setSigned] = useState(latest);
  useEffect(() => {
    let isWanted = true;
    const follow = (): void =>
      void import('./signed-now.ts').then(
        ({ signedNow }) => {
          latest = signedNow();
          if (isWanted) setSigned(latest);
        },
        () => undefined, // it stays as it was written
      );
    follow();
    addEventListener('storage', follow);
    return () => {
      isWanted = false;
      removeEventListener('storage', follow);
    };
  }, []);
  return signed;
}
