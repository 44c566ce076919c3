import { saidText } from '../text/said-text.ts';

/** A text of a question as it is spoken. A decimal comma would part a number in two. */
export const said = (text: string): string => saidText(text.replace(/(\d),(\d)/g, '$1.$2'));
