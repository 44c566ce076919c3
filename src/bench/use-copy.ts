import { useRef, useState } from 'preact/hooks';

/** How copying went: nothing tried yet, done, or refused, with what was to be copied, or with what is told instead. */
export interface Copied {
  readonly state: 'idle' | 'done' | 'refused';
  readonly text: string;
}

const IDLE: Copied = { state: 'idle', text: '' };

/** Copies text to the clipboard and says how it went; a browser may refuse, and then the text is there to be selected. */
export function useCopy(): {
  copied: Copied;
  copy: (text: string) => Promise<void>;
  /** Back to where nothing was tried, with a sentence on why if there is one. */
  forget: (told?: string) => void;
} {
  const [copied, setCopied] = useState<Copied>(IDLE);
  // what was asked last counts: an earlier answer that comes later is of no use
  const latest = useRef(0);
  const copy = async (text: string): Promise<void> => {
    latest.current += 1;
    const mine = latest.current;
    const state = await navigator.clipboard.writeText(text).then(
      () => 'done' as const,
      () => 'refused' as const,
    );
    if (mine === latest.current) setCopied({ state, text });
  };
  return {
    copied,
    copy,
    forget: (told) => setCopied(told === undefined ? IDLE : { state: 'idle', text: told }),
  };
}
