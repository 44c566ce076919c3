import type { BankQuestion } from '../types.ts';
import { CAUTION_NUMBERS } from './numbers.ts';
import { CAUTION_OTHERS } from './others.ts';
import { CAUTION_WORDS } from './words.ts';

/** Cautions. */
export const CAUTIONS: readonly BankQuestion[] = [...CAUTION_NUMBERS, ...CAUTION_OTHERS, ...CAUTION_WORDS];
