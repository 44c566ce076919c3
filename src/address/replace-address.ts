/** Rest before an address that was refused is tried again, in ms, and how often it is. */
const AGAIN_MS = 5000;
const MOST_TRIES = 8;

/** How many addresses have been asked for: a later one overtakes those that wait. */
let asked = 0;

/** The address that was asked for last, as long as it is refused, and where the page stands meanwhile. */
let refused: { readonly url: string; readonly href: string } | undefined;

/** The address of the page, or the one that it is to have as soon as the browser takes it: whoever adds to it adds to that. */
export const addressToBe = (): URL =>
  new URL(refused?.href === location.href ? refused.url : location.href, location.href);

/**
 * Puts an address into the history entry that is shown. Some browsers refuse more than a hundred changes in half a minute, and a
 * page from a file any: that is no reason to stop what the address only follows. So it is tried again after a rest, unless a later
 * address or the reader has moved on meanwhile. Never throws.
 * @param stateOf what the entry then knows, of what it knows at that time.
 */
export function replaceAddress(url: string, stateOf: (now: unknown) => unknown = (now) => now): void {
  asked += 1;
  const [own, { href }] = [asked, location];
  const attempt = (tries: number): void => {
    try {
      history.replaceState(stateOf(history.state), '', url);
      refused = undefined;
    } catch {
      refused = { url, href };
      if (tries < MOST_TRIES)
        setTimeout(() => {
          if (own === asked && location.href === href) attempt(tries + 1);
        }, AGAIN_MS);
    }
  };
  attempt(1);
}
