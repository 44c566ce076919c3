/** Words on what is kept for use without a network. */
export const offlineStrings: {
  readonly notYet: string;
  readonly unable: string;
  readonly insecure: string;
  readonly altered: string;
  readonly kept: (files: number, size: string) => string;
} = {
  notYet: 'At present: not kept in this browser yet, or not the whole of it.',
  unable: 'At present: nothing. This browser cannot keep a site.',
  insecure:
    'At present: nothing. This address begins with http and not with https, and there browsers keep no site; a packed copy works all the same.',
  altered:
    'At the last try something came otherwise than it was built, and that is not kept: a network that wants a login first, a host that was being copied to, or one that adds to pages, a script or a banner. The next visit tries again.',
  kept: (files, size) => `At present: the whole site, ${files} files of ${size} together.`,
};
