import type { BankQuestion } from '../types.ts';
import { METHOD_NUMBERS } from './numbers.ts';
import { METHOD_OTHERS } from './others.ts';
import { METHOD_WORDS } from './words.ts';

/** Methods. */
export const METHODS: readonly BankQuestion[] = [...METHOD_NUMBERS, ...METHOD_OTHERS, ...METHOD_WORDS];
