/** Headers that a host should send with what lies at an address. */
export interface HeaderRule {
  /** Path from the host's root; a star at the end stands for whatever follows. */
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
}

/** What pages may use of a browser: nothing that observes, and what the stage and the bench need, for themselves alone. */
const permissions = [
  ...['fullscreen', 'clipboard-write', 'screen-wake-lock'].map((feature) => `${feature}=(self)`),
  ...[
    'accelerometer',
    'camera',
    'display-capture',
    'geolocation',
    'gyroscope',
    'magnetometer',
    'microphone',
    'midi',
    'payment',
    'publickey-credentials-get',
    'usb',
  ].map((feature) => `${feature}=()`),
].join(', ');

const everywhere = {
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'Permissions-Policy': permissions,
};
/** What scripts, sheets and faces need of it: a worker takes its policy from here, and nothing else of it says anything of a file. */
const ofFiles = {
  'Content-Security-Policy': "default-src 'none'; script-src 'self'; connect-src 'self'",
  'Referrer-Policy': everywhere['Referrer-Policy'],
  'X-Content-Type-Options': everywhere['X-Content-Type-Options'],
};
/** Asked for anew each time, so that a new version is seen. */
const fresh = { 'Cache-Control': 'no-cache' };
/** The name changes with what is in it. */
const lasting = { 'Cache-Control': 'public, max-age=31536000, immutable' };

/** What the site holds at its root. */
export interface SiteRoot {
  /** Base path with its slash at the end. */
  readonly base: string;
  /** The policy that pages carry themselves. */
  readonly policy: string;
  /** Folders and files at the root. */
  readonly folders: readonly string[];
  readonly files: readonly string[];
}

/** The folder of the files with a hash in their name, where Astro puts them. */
const assets = '_astro';
/** What other sites may show in a frame, and what this one shows in its own: the steps of a talk. */
const framed: Readonly<Record<string, { readonly ancestors: string; readonly options?: string }>> = {
  embed: { ancestors: '*' },
  stage: { ancestors: "'self'", options: 'SAMEORIGIN' },
};
const unframed = { ancestors: "'none'", options: 'DENY' };

function folderRule({ base, policy }: SiteRoot, folder: string): HeaderRule {
  const path = `${base}${folder}/*`;
  if (folder === assets) return { path, headers: { ...ofFiles, ...lasting } };
  const { ancestors, options } = framed[folder] ?? unframed;
  const frames = options === undefined ? {} : { 'X-Frame-Options': options };
  return {
    path,
    headers: {
      'Content-Security-Policy': `${policy} frame-ancestors ${ancestors}`,
      ...frames,
      ...everywhere,
      ...fresh,
    },
  };
}

/**
 * The rules of a site, of which just one fits each address: hosts that know several for one address join their headers, and of two
 * policies both hold.
 */
export function headerRules(site: SiteRoot): readonly HeaderRule[] {
  const page = {
    'Content-Security-Policy': `${site.policy} frame-ancestors 'none'`,
    'X-Frame-Options': 'DENY',
    ...everywhere,
    ...fresh,
  };
  return [
    { path: site.base, headers: page },
    ...[...site.files].sort().map((file) => ({ path: `${site.base}${file}`, headers: page })),
    ...[...site.folders].sort().map((folder) => folderRule(site, folder)),
  ];
}

/** The headers for an address, by the rule that fits it. */
export function headersFor(rules: readonly HeaderRule[], pathname: string): Readonly<Record<string, string>> {
  const fits = ({ path }: HeaderRule): boolean =>
    path.endsWith('*') ? pathname.startsWith(path.slice(0, -1)) : path === pathname;
  return rules.find(fits)?.headers ?? {};
}
