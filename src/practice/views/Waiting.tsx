import { useEffect, useRef } from 'preact/hooks';
import { strings } from '../strings.ts';

/** Says that something is being fetched, or that it could not be. */
export function Waiting({ isLost, retry }: { readonly isLost: boolean; readonly retry: () => void }) {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (isLost) button.current?.focus();
  }, [isLost]);
  return (
    <div>
      <p role="status">{isLost ? strings.round.lost : strings.round.fetching}</p>
      {isLost && (
        <button ref={button} type="button" onClick={retry}>
          {strings.round.retry}
        </button>
      )}
    </div>
  );
}
