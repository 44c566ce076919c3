import type { Link } from './sheet.ts';

/** A link with what most have: no loss, dB, of the reading. */
export const linkOf = (
  link: Partial<Link> & Pick<Link, 'id' | 'label' | 'kind' | 'statement' | 'source'>,
): Link => ({
  lossDb: 0,
  unit: 'dB',
  percentOf: 'reading',
  ...link,
});

/** Plain limits, nothing else known. */
export const limits = (halfWidth: number) => ({ form: 'limits', shape: 'rectangular', halfWidth }) as const;

/** Limits of a sine-like influence of unknown phase, as a mismatch is. */
export const uShaped = (halfWidth: number) => ({ form: 'limits', shape: 'arcsine', halfWidth }) as const;
