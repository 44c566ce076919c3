import type { Palette } from '../styles/tokens.ts';

/** A rule of a style sheet, its values resolved, for what SVG can say by attributes. */
export interface StyleRule {
  readonly selector: string;
  readonly attributes: readonly (readonly [name: string, value: string])[];
}

/** Properties that are attributes in SVG as well (SVG 2, 6.6); what else a style sheet says is for a page only. */
const ATTRIBUTES: readonly string[] = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'paint-order',
  'font-size',
  'font-weight',
  'text-anchor',
  'text-decoration',
  'opacity',
];

/** How much a selector weighs: classes and pseudo-classes before names of elements (CSS Selectors 4, 17). */
const weight = (selector: string): number => {
  const classes = selector.match(/\.[\w-]+|:(?!not\b)[a-z-]+/g)?.length ?? 0;
  const names = selector.match(/(?:^|[\s>+~(])[a-z][\w-]*/g)?.length ?? 0;
  return 1000 * classes + names;
};

/** A comma between two selectors, not one within the brackets of `:is()`. */
const BETWEEN = /,(?![^()]*\))/;

const resolved = (value: string, palette: Palette): string =>
  Object.entries(palette)
    .reduce((text, [name, colour]) => text.replaceAll(`var(--${name})`, colour), value)
    .replace(/(\d)px\b/g, '$1');

function attributesOf(body: string, palette: Palette): StyleRule['attributes'] {
  return body.split(';').flatMap((line) => {
    const at = line.indexOf(':');
    const name = line.slice(0, at).trim();
    return at > 0 && ATTRIBUTES.includes(name) ? [[name, resolved(line.slice(at + 1).trim(), palette)]] : [];
  });
}

/**
 * The rules of a style sheet in the order in which they count, the strongest last. Rules for print or other media are left out, and so
 * are those for a pointer, which a picture has none of.
 */
export function styleRules(css: string, palette: Palette): readonly StyleRule[] {
  const plain = css.replace(/\/\*[\s\S]*?\*\//g, '').replace(/@[^{]*\{(?:[^{}]*\{[^{}]*\})*[^{}]*\}/g, '');
  const rules = [...plain.matchAll(/([^{}]+)\{([^{}]*)\}/g)].flatMap(([, selectors = '', body = '']) => {
    const attributes = attributesOf(body, palette);
    return selectors
      .split(BETWEEN)
      .map((selector) => ({ selector: selector.trim(), attributes }))
      .filter(({ selector }) => attributes.length > 0 && !/:(?:hover|focus|active)/.test(selector));
  });
  return rules.toSorted((a, b) => weight(a.selector) - weight(b.selector));
}
