import type { BankQuestion } from '../types.ts';
import { RATIO_NUMBERS } from './numbers.ts';
import { RATIO_OTHERS } from './others.ts';
import { RATIO_WORDS } from './words.ts';

/** Ratios and levels. */
export const RATIOS: readonly BankQuestion[] = [...RATIO_NUMBERS, ...RATIO_OTHERS, ...RATIO_WORDS];
