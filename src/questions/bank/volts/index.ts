import type { BankQuestion } from '../types.ts';
import { VOLT_NUMBERS } from './numbers.ts';
import { VOLT_OTHERS } from './others.ts';
import { VOLT_WORDS } from './words.ts';

/** Volts and watts. */
export const VOLTS: readonly BankQuestion[] = [...VOLT_NUMBERS, ...VOLT_OTHERS, ...VOLT_WORDS];
