import { keptDecimal } from '../store/decimal.ts';
import { followSign } from '../widgets/parts/shown-in-page.ts';

// The numbers of a page with the reader's decimal sign: a file of its own, which pages fetch for whoever has chosen a comma.
function inSign(): void {
  if (keptDecimal() === 'comma') followSign(keptDecimal);
}
inSign();
addEventListener('storage', inSign);
