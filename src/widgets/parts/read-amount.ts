import type { ReadSpec } from '../../text/read/quantity.ts';
import type { Reading } from './NumberField.tsx';

/** A reader of typed text that is fetched when somebody first types: most visitors only look and drag. */
export const readerOf =
  (spec: ReadSpec) =>
  async (text: string): Promise<Reading> => {
    const { readQuantity } = await import('../../text/read/quantity.ts');
    return readQuantity(text, spec);
  };
