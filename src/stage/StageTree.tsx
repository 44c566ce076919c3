import { StageCharges } from './StageCharges.tsx';
import { StageUnits } from './StageUnits.tsx';

/** What a watt is made of, on the wall: the tree, or the charges that are counted. One island for both, so that no page loads more files. */
export default function StageTree({ show }: { readonly show: 'units' | 'charges' }) {
  return show === 'units' ? <StageUnits /> : <StageCharges />;
}
