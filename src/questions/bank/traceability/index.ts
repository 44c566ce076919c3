import type { BankQuestion } from '../types.ts';
import { TRACE_NUMBERS } from './numbers.ts';
import { TRACE_OTHERS } from './others.ts';
import { TRACE_WORDS } from './words.ts';

/** Calibration and traceability. */
export const TRACEABILITY: readonly BankQuestion[] = [...TRACE_NUMBERS, ...TRACE_OTHERS, ...TRACE_WORDS];
