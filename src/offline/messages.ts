/**
 * Why the site is not kept: the browser has no room for it, keeps nothing, the network failed, or what came is not what was built. Of the
 * last two the next visit goes on.
 */
export type NotKept = 'full' | 'refused' | 'network' | 'altered';

/** What the worker tells every page of the site. */
export interface Told {
  readonly notKept: NotKept;
}

/** How much is kept, as the worker answers. */
export interface Amount {
  readonly files: number;
  readonly bytes: number;
}

/** What a page asks of the worker: to take the place of the one before, or how much it keeps. */
export type Asked = 'take over' | 'how much';
