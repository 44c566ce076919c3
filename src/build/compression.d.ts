/** The part of compression that `site-server.ts` uses; its types would bring those of a framework. */
declare module 'compression' {
  import type { IncomingMessage, ServerResponse } from 'node:http';

  export default function compression(): (
    request: IncomingMessage,
    response: ServerResponse,
    next: () => void,
  ) => void;
}
