/** Where the site is published: the origin of its host, and the path of its folder there, with a slash at both ends. */
export interface SiteAddress {
  readonly origin: string;
  readonly base: string;
  /** Whether somebody said so; otherwise full addresses are those of a host that is reserved for examples (RFC 2606). */
  readonly stated: boolean;
}

const UNSTATED = 'https://example.org/';

/** A path with one slash at each end: `club/watt` becomes `/club/watt/`. */
const asBase = (path: string): string => `/${path}/`.replace(/\/{2,}/g, '/');

/**
 * Origin and base path from one setting, `https://club.example/watt/`; a base given apart counts before the path in it.
 * @throws RangeError for an address that is none, or that no page can be fetched from.
 */
export function siteAddress(url: string | undefined, base?: string): SiteAddress {
  const stated = url !== undefined && url.trim() !== '';
  const address = URL.canParse(stated ? url : UNSTATED) ? new URL(stated ? url : UNSTATED) : undefined;
  if (address === undefined || !/^https?:$/.test(address.protocol))
    throw new RangeError(
      `siteAddress: SITE_URL must begin with https:// or http://, got ${JSON.stringify(url)}`,
    );
  if (address.search !== '' || address.hash !== '' || /\.html?$/i.test(address.pathname))
    throw new RangeError(`siteAddress: SITE_URL must end with its folder, got ${JSON.stringify(url)}`);
  return { origin: address.origin, base: asBase(base ?? address.pathname), stated };
}
