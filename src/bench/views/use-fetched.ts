import { useEffect, useState } from 'preact/hooks';

/** A part of the bench that is fetched when it is first wanted. */
export interface Fetched<Module> {
  readonly module: Module | undefined;
  /** Whether fetching has failed: the reader may try again. */
  readonly failed: boolean;
  readonly again: () => void;
}

/**
 * Fetches a module once it is wanted, never on the server nor in the first render.
 * @param load the same function in every render.
 */
export function useFetched<Module>(load: () => Promise<Module>, wanted: boolean): Fetched<Module> {
  const [module, setModule] = useState<Module | undefined>(undefined);
  const [failed, setFailed] = useState(false);
  const due = wanted && !failed && module === undefined;
  useEffect(() => {
    if (!due) return;
    let left = false;
    load().then(
      (loaded) => !left && setModule(() => loaded),
      () => !left && setFailed(true),
    );
    return () => {
      left = true;
    };
  }, [load, due]);
  return { module, failed, again: () => setFailed(false) };
}
