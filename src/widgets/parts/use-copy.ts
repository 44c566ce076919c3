import { useRef, useState } from 'preact/hooks';

/** How copying went: nothing tried yet, done, or refused, with what was to be copied, or with what is told instead. */
export interface Copied {
  readonly state: 'idle' | 'done' | 'refused';
  readonly text: string;
}

const IDLE: Copied = { state: 'idle', text: '' };

/** Puts a text on the clipboard. A page that came without encryption from another machine is given none to put it on. */
async function put(text: string): Promise<'done' | 'refused'> {
  try {
    await navigator.clipboard.writeText(text);
    return 'done';
  } catch {
    return 'refused';
  }
}

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
    const state = await put(text);
    if (mine === latest.current) setCopied({ state, text });
  };
  const forget = (told?: string): void => {
    latest.current += 1;
    setCopied(told === undefined ? IDLE : { state: 'idle', text: told });
  };
  return { copied, copy, forget };
}
