type Load = () => Promise<() => Promise<void>>;

/** A turn for whatever else waits: a key, a finger, a frame. */
const turn = (): Promise<void> => new Promise((done) => setTimeout(done));

/**
 * When the page has been drawn, so that script does not come before what is to be read on a slow line; at once where nobody looks, for a page
 * in the background is not drawn.
 */
export const painted = (): Promise<void> =>
  new Promise<unknown>((done) => (document.hidden ? done(true) : requestAnimationFrame(done))).then(turn);

/** Fetches what an island is made of and wakes it, each in a turn of its own, so that the page answers between the two. */
export async function wake(load: Load): Promise<void> {
  const hydrate = await load();
  await turn();
  await hydrate();
}
