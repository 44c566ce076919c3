import { Fetching } from '../views/Fetching.tsx';
import { useFetched } from '../views/use-fetched.ts';
import { shelfStrings as strings } from './shelf-strings.ts';

const load = () => import('./ShelfView.tsx');

/**
 * The shelf of the reader's instruments. What is kept is known in the browser alone, so that the server has nothing to draw: the shelf
 * is fetched once the page is awake.
 */
export default function ShelfPage() {
  const { module: Parts, failed, again } = useFetched(load, true);
  return (
    <section class="needs-script shelf" aria-labelledby="shelf">
      <h2 id="shelf">{strings.list}</h2>
      {Parts ? (
        <Parts.ShelfView />
      ) : (
        <Fetching class="late" failed={failed} again={again} waiting={strings.waiting} />
      )}
    </section>
  );
}
