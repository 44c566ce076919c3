import type { BankQuestion } from '../types.ts';
import { VERDICT_NUMBERS } from './numbers.ts';
import { VERDICT_OTHERS } from './others.ts';
import { VERDICT_WORDS } from './words.ts';

/** Readings and verdicts. */
export const VERDICTS: readonly BankQuestion[] = [...VERDICT_NUMBERS, ...VERDICT_OTHERS, ...VERDICT_WORDS];
