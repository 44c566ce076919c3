import { coordinate } from './linear-scale.ts';

/** Measures in units of the view box. */
export const SHARE_BAR = { width: 80, height: 12, line: 1 } as const;

/** Width of the filled part. A negative share, of a part that cancels another, fills nothing; more than all fills all. */
export function shareBarLayout(share: number): { width: number } {
  if (!Number.isFinite(share)) throw new RangeError(`shareBarLayout: share must be finite, got ${share}`);
  const inner = SHARE_BAR.width - 2 * SHARE_BAR.line;
  return { width: coordinate(inner * Math.min(1, Math.max(0, share))) };
}
