import type { BankQuestion } from '../types.ts';
import { BAND_NUMBERS } from './numbers.ts';
import { BAND_OTHERS } from './others.ts';
import { BAND_WORDS } from './words.ts';

/** Tolerances and bands. */
export const BANDS: readonly BankQuestion[] = [...BAND_NUMBERS, ...BAND_OTHERS, ...BAND_WORDS];
