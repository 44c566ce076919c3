type Load = () => Promise<() => Promise<void>>;

/** A turn for whatever else waits: a key, a finger, a frame. */
const turn = (): Promise<void> => new Promise((done) => setTimeout(done));

/** So long after all has come that is to be drawn, it passes for drawn: what is out of sight never is, in a frame say. */
const SURELY_MS = 300;

/**
 * When the page has been drawn and shown, so that script does not come before what is to be read on a slow line; at once where nobody
 * looks, for a page in the background is not drawn.
 */
export const painted = (): Promise<void> =>
  new Promise<unknown>((done) => {
    if (document.hidden) return done(true);
    // a frame that was asked for comes before what is drawn in it is shown
    new PerformanceObserver(done).observe({ type: 'paint', buffered: true });
    const surely = (): unknown => setTimeout(done, SURELY_MS);
    return document.readyState === 'complete' ? surely() : addEventListener('load', surely);
  }).then(turn);

/** Fetches what an island is made of and wakes it, each in a turn of its own, so that the page answers between the two. */
export async function wake(load: Load): Promise<void> {
  const hydrate = await load();
  await turn();
  await hydrate();
}
