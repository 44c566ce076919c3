import { useEffect, useMemo, useState } from 'preact/hooks';
import { tellUnfetched, whileOpening } from './opening.ts';

/**
 * A function with what it brings along, fetched when it is first needed; undefined until it is there. Where it does not come, the page says so.
 * @param fetched the same function on every call.
 * @param given what it is needed for: where it could not be fetched, it is asked for again with another.
 */
export function useFetched<Given, Made>(
  isNeeded: boolean,
  fetched: () => Promise<(given: Given) => Made>,
  given: Given,
): ((given: Given) => Made) | undefined {
  const [make, setMake] = useState<((given: Given) => Made) | undefined>(undefined);
  const isMissing = isNeeded && make === undefined;
  useEffect(() => {
    if (!isMissing) return;
    void whileOpening(async () => {
      const found = await fetched();
      // A function as state is handed over in a function: Preact would call it otherwise.
      setMake(() => found);
    }).catch(tellUnfetched);
  }, [isMissing, fetched, given]);
  return make;
}

interface Evaluated<Of, Whole> {
  readonly of: Of;
  /** Whether it is what the page was written with, and what that comes to. */
  readonly isPrepared: boolean;
  readonly prepared: Whole;
  /** Fetches what evaluates it. The same function on every call. */
  readonly fetched: () => Promise<(of: Of) => Whole>;
}

/** What a computation makes that is fetched with the first change; undefined until it is there. */
export function useEvaluated<Of, Whole>({
  of,
  isPrepared,
  prepared,
  fetched,
}: Evaluated<Of, Whole>): Whole | undefined {
  const evaluate = useFetched(!isPrepared, fetched, of);
  return useMemo(() => (isPrepared ? prepared : evaluate?.(of)), [isPrepared, prepared, evaluate, of]);
}
