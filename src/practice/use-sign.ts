import { shownText } from '../text/shown-text.ts';
import { useDecimal } from '../widgets/parts/use-decimal.ts';
import { inSign } from './in-sign.ts';
import type { ShownSitting } from './shown.ts';

/** What makes questions and texts read with the reader's decimal sign; as they were written until the page has woken. */
export interface Signed {
  readonly seen: (sitting: ShownSitting) => ShownSitting;
  readonly say: (text: string) => string;
}

export function useSign(): Signed {
  const decimal = useDecimal();
  return {
    seen: (sitting) => inSign(sitting, decimal),
    say: (text) => shownText(text, decimal),
  };
}
