/**
 * Colours, sizes and the type face, once. The build makes CSS custom properties of them (`tokens.css`); a figure that
 * stands alone (a card, an exported picture) reads the same values from here.
 *
 * `band` means the reading band and nothing else on the page may use it. Contrasts against the ground, by the WCAG
 * formula: ink and muted text above 7:1, band and rule lines that carry meaning above 4.5:1.
 */
export interface Palette {
  readonly paper: string;
  readonly raised: string;
  readonly ink: string;
  readonly muted: string;
  readonly rule: string;
  readonly band: string;
  readonly ghost: string;
}

export const light: Palette = {
  paper: '#fbfaf4',
  raised: '#f3f1e7',
  ink: '#16212b',
  muted: '#45525d',
  rule: '#b9b6aa',
  band: '#0f766a',
  ghost: '#6d7a84',
};

export const dark: Palette = {
  paper: '#14181b',
  raised: '#1e2428',
  ink: '#f1efe6',
  muted: '#bcc4ca',
  rule: '#566069',
  band: '#3fbfae',
  ghost: '#8b969e',
};

/** The stage and paper: black on white, whatever the reader's setting. */
const stage: Palette = {
  paper: '#ffffff',
  raised: '#ffffff',
  ink: '#000000',
  muted: '#000000',
  rule: '#000000',
  band: '#006355',
  ghost: '#444444',
};

/**
 * Where the reader's system puts its own colours in place of ours, figures take them too: drawings are left as they are, and ink could
 * be drawn on black.
 */
const forced: Palette = {
  paper: 'Canvas',
  raised: 'Canvas',
  ink: 'CanvasText',
  muted: 'CanvasText',
  rule: 'CanvasText',
  band: 'LinkText',
  ghost: 'CanvasText',
};

const declarations = (palette: Palette): string =>
  Object.entries(palette)
    .map(([name, value]) => `--${name}:${value};`)
    .join('');

/** The style sheet made from the tokens: light by default, dark by the reader's setting, black on white on paper. */
export function tokensCss(): string {
  return [
    `:root{color-scheme:light dark;${declarations(light)}}`,
    `@media (prefers-color-scheme:dark){:root{${declarations(dark)}}}`,
    `:root.stage{color-scheme:light;${declarations(stage)}}`,
    `@media (forced-colors:active){:root,:root.stage{color-scheme:light dark;${declarations(forced)}}}`,
    `@media print{:root{color-scheme:light;${declarations(stage)}}}`,
    '',
  ].join('\n');
}
