import { useMemo } from 'preact/hooks';
import { Announcer } from '../../widgets/parts/Announcer.tsx';
import type { PointResult } from '../results/point-result.ts';
import { strings } from '../strings.ts';
import type { Answering } from '../use-answering.ts';
import { useLate } from '../use-late.ts';
import type { Results } from '../use-results.ts';

interface SpokenResultProps {
  readonly answering: Answering | undefined;
  readonly results: Results | undefined;
  /** How many entries cannot be used. */
  readonly problems: number;
  /** Whether the result is of this sheet at all. */
  readonly own: boolean;
  readonly mayWait: boolean;
}

/** Speaks the result once it has come to rest; or that it is not that of what was typed. */
export function SpokenResult({ answering, results, problems, own, mayWait }: SpokenResultProps) {
  const shown = useLate(results?.shown, !mayWait);
  const say = (result: PointResult | undefined): string | undefined => result && answering?.summarise(result);
  const summary = useMemo(() => say(shown), [answering, shown]);
  const opening = useMemo(() => say(results?.opening), [answering, results?.opening]);
  const waiting = own && shown ? [strings.stale(shown.sheet.title)] : [];
  const told = problems > 0 && shown ? [`${strings.problems(problems)}.`, ...waiting].join(' ') : summary;
  return <Announcer summary={told ?? ''} opening={opening} />;
}
