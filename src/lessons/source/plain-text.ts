import { type ComputeFunction, formulaOf } from '../../formulas/index.ts';
import { quantityText } from '../../text/quantity-text.ts';
import { isUnitName } from '../../text/units.ts';
import { textOfValue } from '../values.ts';
import { type Tag, tagsIn } from './tags.ts';

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

function givenText({ value, unit, decimals, plusMinus }: Tag['attributes']): string {
  if (typeof value !== 'number' || typeof unit !== 'string' || !isUnitName(unit)) return '';
  const text = quantityText('shown', {
    value,
    unit,
    decimals: typeof decimals === 'number' ? decimals : 0,
  });
  return plusMinus === true ? `±${text}` : text;
}

/** What a tag puts into the text of a page, as far as it is words. */
function wordsOf({ name, isClosing, attributes }: Tag): string {
  if (isClosing) return '';
  switch (name) {
    case 'Value':
      return textOfValue(textOf(attributes.of));
    case 'Given':
      return givenText(attributes);
    case 'TryState':
      return textOf(attributes.text);
    case 'Mistake':
      return `${textOf(attributes.what)}: ${textOfValue(textOf(attributes.costs))}.\n`;
    case 'Formula':
      return `${formulaOf(textOf(attributes.id) as ComputeFunction).words}\n`;
    default:
      return '';
  }
}

/** Text without what makes it bold, a link, a list or a table. */
const withoutMarks = (markdown: string): string =>
  markdown
    .replace(/<\/?[a-z][^>]*>/g, ' ')
    .replace(/!?\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/^\s*(?:#+|[-*]|\d+\.)\s+/gm, '')
    .replace(/^[\s|:-]+$/gm, '')
    .replace(/\s*\|\s*/g, ' ')
    .replace(/\*+|`+|(?<!\w)_|_(?!\w)/g, '')
    .replace(/[^\S\u00a0\u202f]+/g, ' ')
    .trim();

/** The words of a piece of a lesson's source as a reader of the page has them, numbers computed, in one line. */
export function plainText(mdx: string): string {
  let text = '';
  let done = 0;
  for (const tag of tagsIn(mdx)) {
    text += mdx.slice(done, tag.from) + wordsOf(tag);
    done = tag.to;
  }
  return withoutMarks(text + mdx.slice(done));
}
