import { z } from 'astro/zod';
import type { Start } from './starting.ts';

const schema = z
  .object({
    instance: z.string().optional(),
    start: z.record(z.string(), z.union([z.number(), z.string()])).optional(),
  })
  .strict();

/** What a page may tell a widget: its name in the address, where two share the page, and what it begins with. Unknown props are refused. */
export function ownProps(props: unknown): { instance?: string; start?: Start } {
  const { instance, start } = schema.parse(props);
  return { ...(instance !== undefined && { instance }), ...(start !== undefined && { start }) };
}
