import { useEffect, useState } from 'preact/hooks';
import { keptDecimal } from '../../store/decimal.ts';
import type { Decimal } from '../../text/style.ts';

/** The reader's decimal sign. A point until the page has woken, as the page was written; then as kept, here or by another tab. */
export function useDecimal(): Decimal {
  const [decimal, setDecimal] = useState<Decimal>('point');
  useEffect(() => {
    const follow = (): void => {
      setDecimal(keptDecimal());
    };
    follow();
    addEventListener('storage', follow);
    return () => removeEventListener('storage', follow);
  }, []);
  return decimal;
}
