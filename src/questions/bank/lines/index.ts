import type { BankQuestion } from '../types.ts';
import { LINE_NUMBERS } from './numbers.ts';
import { LINE_OTHERS } from './others.ts';
import { LINE_WORDS } from './words.ts';

/** Pads and lines. */
export const LINES: readonly BankQuestion[] = [...LINE_NUMBERS, ...LINE_OTHERS, ...LINE_WORDS];
