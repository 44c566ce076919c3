import type { Decimal } from '../style.ts';
import { asBbcode, asMarkdown, asPlainText, asUnicodeText } from './format.ts';
import type { Summary } from './piece.ts';

/** The forms in which a result is copied, by where they go: mail and old boards, anywhere else, and two kinds of forum. */
export const TEXT_FORMS = ['ascii', 'unicode', 'markdown', 'bbcode'] as const;
export type TextForm = (typeof TEXT_FORMS)[number];

/** Names of the forms, as the reader chooses among them. */
export const textFormNames: Readonly<Record<TextForm, string>> = {
  ascii: 'Plain text',
  unicode: 'Plain text with signs',
  markdown: 'Markdown',
  bbcode: 'BBCode',
};

/** A summary as text in one of the forms, with a decimal sign. */
export function inForm(form: TextForm, summary: Summary, decimal: Decimal = 'point'): string {
  switch (form) {
    case 'ascii':
      return asPlainText(summary, decimal);
    case 'unicode':
      return asUnicodeText(summary, decimal);
    case 'markdown':
      return asMarkdown(summary, decimal);
    case 'bbcode':
      return asBbcode(summary, decimal);
  }
}
