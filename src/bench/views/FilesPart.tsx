import { filesPartStrings as strings } from '../export/files-part-strings.ts';
import type { Taken } from '../export/taken.ts';
import type { BenchAction } from '../state/actions.ts';
import { FetchedPart } from './FetchedPart.tsx';

export interface FilesProps {
  /** What goes out, made when it is asked for. */
  readonly take: () => Taken;
  /** Whether the point that is shown has a figure. */
  readonly inRange: boolean;
  /** Whether the sheet has a result of its own: without one there is nothing to save yet. */
  readonly own: boolean;
  readonly send: (action: BenchAction) => void;
}

const load = () => import('./Files.tsx');

/** Files to be saved and opened; fetched when unfolded. */
export function FilesPart(props: FilesProps) {
  return (
    <FetchedPart id="files" {...strings} load={load}>
      {({ Files }) => <Files {...props} />}
    </FetchedPart>
  );
}
