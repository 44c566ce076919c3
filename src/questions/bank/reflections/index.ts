import type { BankQuestion } from '../types.ts';
import { REFLECTION_NUMBERS } from './numbers.ts';
import { REFLECTION_OTHERS } from './others.ts';
import { REFLECTION_WORDS } from './words.ts';

/** Reflections. */
export const REFLECTIONS: readonly BankQuestion[] = [
  ...REFLECTION_NUMBERS,
  ...REFLECTION_OTHERS,
  ...REFLECTION_WORDS,
];
