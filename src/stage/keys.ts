/** What a key asks of the stage. */
export type Wish = { readonly to: number } | Order;
/** What else is asked for. */
export type Order = 'blank' | 'screen' | 'notes' | 'prepared' | 'help' | 'number';

/** Keys that move, whatever has the focus: what a clicker sends. */
const CLICKER = new Map([
  ['PageDown', 1],
  ['PageUp', -1],
]);
/** Keys that move where no control has the focus. */
const ARROWS = new Map([
  ['ArrowRight', 1],
  [' ', 1],
  ['ArrowLeft', -1],
]);
/** Keys of one sign, which a reader can switch off: who dictates or has a trembling hand sends them unmeant. */
const SIGNS = new Map<string, Order>([
  ['b', 'blank'],
  ['.', 'blank'],
  ['f', 'screen'],
  ['n', 'notes'],
  ['0', 'prepared'],
  ['?', 'help'],
  ['w', 'number'],
]);

export interface Press {
  readonly key: string;
  /** Step in sight, and how many there are. */
  readonly at: number;
  readonly count: number;
  /** Whether a control has the focus that uses the key itself. */
  readonly inControl: boolean;
  /** Whether keys of one sign are heard. */
  readonly signs: boolean;
}

/** The step nearest to a wish. */
export const stepWithin = (wish: number, count: number): number => Math.min(count - 1, Math.max(0, wish));

/** What a pressed key asks for, or undefined if nothing. Pure, so that a test can press every key. */
export function wishOf({ key, at, count, inControl, signs }: Press): Wish | undefined {
  const step = CLICKER.get(key) ?? (inControl ? undefined : ARROWS.get(key));
  if (step !== undefined) return { to: stepWithin(at + step, count) };
  if (inControl) return undefined;
  if (key === 'Home') return { to: 0 };
  if (key === 'End') return { to: count - 1 };
  return signs ? SIGNS.get(key) : undefined;
}

/** A step that is scrolled has the focus for the arrows up and down, which the deck leaves alone. */
const CONTROLS =
  'input, select, textarea, dialog, [contenteditable], [role="slider"], [tabindex="0"]:not(.slide), [data-deck-keys="own"]';
/** What is pressed by the space bar and leaves the other keys to the deck. */
const PRESSED = 'button, a, summary';

/** Whether what has the focus uses the key itself. It may stand in a frame, whose elements are none of this window's. */
export function usesKey(target: EventTarget | null, key: string): boolean {
  if (target === null || !('closest' in target)) return false;
  const element = target as Element;
  return element.closest(CONTROLS) !== null || (key === ' ' && element.closest(PRESSED) !== null);
}
