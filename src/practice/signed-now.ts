import { keptDecimal } from '../store/decimal.ts';
import { shownText } from '../text/shown-text.ts';
import { inSign } from './in-sign.ts';
import { AS_WRITTEN, type Signed } from './use-sign.ts';

/** What the reader's decimal sign, as it is kept now, makes of questions and texts. */
export function signedNow(): Signed {
  const decimal = keptDecimal();
  if (decimal === 'point') return AS_WRITTEN;
  return {
    seen: (sitting) => inSign(sitting, decimal),
    say: (text) => shownText(text, decimal),
  };
}
