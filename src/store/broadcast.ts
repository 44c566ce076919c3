/**
 * A channel to the other windows of this site; undefined where the browser has none, or refuses it: one that is told to keep nothing may
 * count it as something kept (from memory).
 */
export function openBroadcast(name: string): BroadcastChannel | undefined {
  try {
    return new BroadcastChannel(name);
  } catch {
    return undefined;
  }
}
