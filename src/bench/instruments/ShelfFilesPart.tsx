import { FetchedPart } from '../views/FetchedPart.tsx';
import { shelfStrings as strings } from './shelf-strings.ts';
import type { ShelfTools } from './use-shelf.ts';

const load = () => import('./ShelfFiles.tsx');

/** Files of instruments; fetched when unfolded. */
export function ShelfFilesPart(tools: ShelfTools) {
  return (
    <FetchedPart id="files" {...strings.files} load={load}>
      {({ ShelfFiles }) => <ShelfFiles {...tools} />}
    </FetchedPart>
  );
}
