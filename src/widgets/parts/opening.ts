/** What a script that waits for the page can see while an address is being read. */
const OPENING = 'data-opening';

/** What is told where nothing could be fetched to read an address with. */
export const LOST_ADDRESS = 'Address not read. Load the page again.';

/** Has the page say that something it asked for did not come; a page without a place for notes (the wall, a frame) keeps quiet. */
export const tellUnfetched = (): unknown => dispatchEvent(new Event('unfetched'));

let under = 0;

/** Does work that opens what an address carries; as long as any such work goes on, the page says so. */
export async function whileOpening(work: () => Promise<unknown>): Promise<void> {
  const { documentElement } = document;
  under += 1;
  documentElement.setAttribute(OPENING, '');
  try {
    await work();
  } finally {
    under -= 1;
    if (under === 0) documentElement.removeAttribute(OPENING);
  }
}
