const base = import.meta.env.BASE_URL.replace(/\/$/, '');

/** A root-relative address of this site (`/learn/`) with the base path in front, wherever the site is published. */
export const link = (path: string): string => `${base}${path}`;
