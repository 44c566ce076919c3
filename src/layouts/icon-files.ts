/** A picture of the site's mark, made by the build. */
export interface IconFile {
  /** Name without `.png`. */
  readonly file: string;
  readonly pixels: number;
  /** A maskable one may be cut to a circle: its mark stands within the inner four fifths. */
  readonly purpose: 'any' | 'maskable';
}

/** The pictures that telephones and desktops ask for. */
export const iconFiles: readonly IconFile[] = [
  { file: 'icon-180', pixels: 180, purpose: 'any' },
  { file: 'icon-192', pixels: 192, purpose: 'any' },
  { file: 'icon-512', pixels: 512, purpose: 'any' },
  { file: 'icon-round-512', pixels: 512, purpose: 'maskable' },
];
