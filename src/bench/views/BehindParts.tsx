import type { BenchResult } from '../result.ts';
import { BudgetPart } from './BudgetPart.tsx';
import { CautionsPart } from './CautionsPart.tsx';
import { CopyPart } from './CopyPart.tsx';
import { WaysPart } from './WaysPart.tsx';

/** What stands behind the result. */
export function BehindParts({ result, link }: { result: BenchResult; link: () => string | undefined }) {
  return (
    <>
      <CautionsPart result={result} />
      <WaysPart result={result} />
      <BudgetPart result={result} />
      <CopyPart result={result} link={link} />
    </>
  );
}
