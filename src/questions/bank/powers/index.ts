import type { BankQuestion } from '../types.ts';
import { POWER_NUMBERS } from './numbers.ts';
import { POWER_OTHERS } from './others.ts';
import { POWER_WORDS } from './words.ts';

/** Kinds of power. */
export const POWERS: readonly BankQuestion[] = [...POWER_NUMBERS, ...POWER_OTHERS, ...POWER_WORDS];
