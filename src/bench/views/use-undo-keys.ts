import { useEffect, useRef } from 'preact/hooks';
import { undoKey } from '../form/undo-keys.ts';

/** Inside these the browser's own undo of typing stays. */
const TYPING = 'textarea, input:not([type="radio"], [type="checkbox"], [type="range"], [type="button"])';

/** The keys of undo and redo on the whole page, text fields apart. */
export function useUndoKeys(send: (action: { readonly type: 'undo' | 'redo' }) => void): void {
  const latest = useRef(send);
  latest.current = send;
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const type = undoKey(event);
      if (type === undefined || (event.target instanceof Element && event.target.matches(TYPING))) return;
      event.preventDefault();
      latest.current({ type });
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
}
