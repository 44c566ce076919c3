import type { Tried } from '../../sheet/tried.ts';
import type { TryOrder } from '../../sheet/tries.ts';

/** What the page asks of the worker. */
export type TriesOrder = TryOrder;

/** What the worker says: a result on the way, the last one, or why there is none. */
export type TriesNews =
  | { readonly kind: 'far'; readonly tried: Tried }
  | { readonly kind: 'done'; readonly tried: Tried }
  | { readonly kind: 'failed'; readonly message: string };
