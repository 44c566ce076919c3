import type { APIRoute } from 'astro';
import { link } from '../layouts/link.ts';

/** Everything may be found; it counts where the site stands at the root of its host. */
export const GET: APIRoute = ({ site }) =>
  new Response(`User-agent: *\nAllow: /\n\nSitemap: ${new URL(link('/sitemap-index.xml'), site).href}\n`);
