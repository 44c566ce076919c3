/** The document that defines a term. */
export type Vocabulary = 'vim' | 'conformity' | 'radioRegulations' | 'decibelUse' | 'siBrochure' | 'trade';

/** Where a term is defined. */
export interface Defined {
  readonly in: Vocabulary;
  /** Entry or clause; absent for a word of the trade that no document at hand defines. */
  readonly entry?: string;
  /** Whether the number was checked against the document; if not, the page says that it is from memory. */
  readonly checked?: boolean;
}

/** One term of the vocabulary, in our own words. Plain text: it stands on the reference page and in a note beside a lesson. */
export interface Word {
  readonly term: string;
  /** Another name, or the letter that stands for it. */
  readonly also?: string;
  /** One or two sentences that hold without the rest of the page. */
  readonly means: string;
  /** What the word is for, or what it is taken for and is not. */
  readonly mind?: string;
  readonly defined: Defined;
}

/** An entry of the VIM whose number was checked. */
export const vim = (entry: string): Defined => ({ in: 'vim', entry, checked: true });

/** An entry whose number is from memory. */
export const recalled = (entry: string, document: Vocabulary = 'vim'): Defined => ({ in: document, entry });

/** A word of the trade. */
export const trade = (): Defined => ({ in: 'trade' });
