/**
 * When the page has been drawn for the first time, so that script does not come before what is to be read on a slow line. At once where
 * nobody looks: a page in the background is not drawn.
 */
export const painted = (): Promise<void> =>
  new Promise((done) => {
    if (document.hidden) done();
    else requestAnimationFrame(() => setTimeout(done));
  });
