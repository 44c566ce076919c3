import type { Example } from './example.ts';
import { twoPadsIntoAReceiver } from './two-pads-into-a-receiver.ts';

/** Every worked example, in the order of the list page. */
export const examples: readonly Example[] = [twoPadsIntoAReceiver];
