import type { APIRoute } from 'astro';
import { iconFiles } from '../layouts/icon-files.ts';
import { link } from '../layouts/link.ts';
import { light } from '../styles/tokens.ts';
import { SITE_NAME } from '../text/site-name.ts';

/** What a browser needs to know to put the site beside other programs. */
export const GET: APIRoute = () =>
  new Response(
    JSON.stringify({
      name: SITE_NAME,
      short_name: 'A Watt?',
      description: 'What power really leaves a small transmitter, and how far to trust the figure.',
      lang: 'en',
      id: link('/'),
      start_url: link('/'),
      scope: link('/'),
      display: 'minimal-ui',
      background_color: light.paper,
      theme_color: light.paper,
      icons: [
        { src: link('/icon.svg'), sizes: 'any', type: 'image/svg+xml' },
        ...iconFiles.map(({ file, pixels, purpose }) => ({
          src: link(`/icons/${file}.png`),
          sizes: `${pixels}x${pixels}`,
          type: 'image/png',
          purpose,
        })),
      ],
    }),
    { headers: { 'content-type': 'application/manifest+json' } },
  );
