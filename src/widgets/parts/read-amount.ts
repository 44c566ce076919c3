import type { ReadSpec } from '../../text/read/quantity.ts';
import type { Reading } from './NumberField.tsx';

const reading = () => import('../../text/read/quantity.ts');

const LOST = 'Not read: is there a network? Type it once more.';

/** A reader of typed text that is fetched when somebody first types: most visitors only look and drag. Where it cannot be, it says so. */
export const readerOf =
  (spec: ReadSpec, fetched = reading) =>
  async (text: string): Promise<Reading> => {
    const found = await fetched().catch(() => undefined);
    return found === undefined ? { ok: false, problem: LOST } : found.readQuantity(text, spec);
  };
