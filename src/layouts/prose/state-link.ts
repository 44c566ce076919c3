import { z } from 'astro/zod';

/** Attributes by which a tag leads to a state of a figure on its page. */
export const stateLink = {
  /** The part of the address after `?`, its version last. */
  state: z.string().regex(/^[A-Za-z0-9.=&_-]+$/),
  /** Where the figure stands on the page: its instance, or `figure` where it has none. */
  at: z
    .string()
    .regex(/^[a-z][a-z0-9]*$/)
    .default('figure'),
};

/** The link itself, relative to the page. */
export const stateHref = ({ state, at }: { state: string; at: string }): string => `?${state}#${at}`;
