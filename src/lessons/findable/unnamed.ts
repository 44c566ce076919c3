import type { SearchDocument } from '../../search/document.ts';

/** Something that can be found, before its other names are added. */
export type Unnamed = Omit<SearchDocument, 'id' | 'also'>;
