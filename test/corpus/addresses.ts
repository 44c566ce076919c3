import type { Kind } from './kinds.ts';

/** An address as somebody may have kept it, and what it must open. */
export interface KeptAddress {
  readonly kind: Kind;
  readonly version: number;
  /** What follows `?` or `#`. */
  readonly address: string;
  readonly opens: Readonly<Record<string, unknown>>;
}

/**
 * One address at least of every kind and version ever published. Lines are added and never changed or taken away: people
 * have these in their mail.
 */
export const addresses: readonly KeptAddress[] = [
  { kind: 'codec', version: 1, address: 'v=1', opens: { pad: -20, rule: 'simple', limit: 28.5 } },
  {
    kind: 'codec',
    version: 1,
    address: 'p=-6.5&n=12&r=0.25&u=&d=g&t=50-_3a9--Pad_2c-_20-left&o=7.1_a-_2d-7.2&v=1',
    opens: {
      pad: -6.5,
      repeats: 12,
      rating: 0.25,
      limit: undefined,
      rule: 'guardBand',
      title: '50 \u03a9 Pad, left',
      note: '7.1\n-7.2',
    },
  },
  {
    kind: 'codec',
    version: 1,
    address: 'l=3&l1n=20-dB-pad&l1g=20&l2n=3-m-of-coax&l2g=0.1&l2f=u&v=1',
    opens: {
      links: [
        { label: '20 dB pad', lossDb: 20, form: 'limits' },
        { label: '3 m of coax', lossDb: 0.1, form: 'expanded' },
        { label: '', lossDb: 0, form: 'limits' },
      ],
    },
  },
  { kind: 'codec', version: 1, address: 'l=0&v=1', opens: { links: [] } },
];
