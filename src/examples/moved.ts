/** A worked example that once had another address. */
export interface Moved {
  /** The slug that people have linked to. */
  readonly from: string;
  /** The slug under which it stands today. */
  readonly to: string;
}

/** Every example whose slug was changed, for ever: a page that leads on stands at each old address. None has moved yet. */
export const moved: readonly Moved[] = [];
