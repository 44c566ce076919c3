/** A tag in the source of a lesson. */
export interface Tag {
  readonly name: string;
  readonly isClosing: boolean;
  /** Attributes as they stand there: texts, what stands in braces as JSON, and `true` for a bare name. */
  readonly attributes: Readonly<Record<string, unknown>>;
  /** Where it begins and where what follows it begins. */
  readonly from: number;
  readonly to: number;
}

const TAG = /<(\/?)([A-Z]\w*)((?:[^>"{]|"[^"]*"|\{[^}]*\})*)>/g;
const ATTRIBUTE = /(\w+)(?:="([^"]*)"|=\{([^}]*)\})?/g;

function attributesIn(inside: string): Tag['attributes'] {
  return Object.fromEntries(
    [...inside.matchAll(ATTRIBUTE)].map(([, name = '', text, json]) => {
      if (json !== undefined) return [name, JSON.parse(json) as unknown];
      return [name, text ?? true];
    }),
  );
}

/** The tags of a lesson's source, in order; those of HTML begin with a small letter and are none. */
export const tagsIn = (mdx: string): readonly Tag[] =>
  [...mdx.matchAll(TAG)].map(({ 0: whole, 1: close, 2: name = '', 3: inside = '', index }) => ({
    name,
    isClosing: close === '/',
    attributes: attributesIn(inside),
    from: index,
    to: index + whole.length,
  }));

/** The source without what no reader sees: front matter and comments. */
export const seenSource = (mdx: string): string =>
  mdx.replace(/^---[\s\S]*?\n---/, '').replace(/\{\/\*[\s\S]*?\*\/\}/g, '');
