import { BANDS } from './bands/index.ts';
import { CAUTIONS } from './cautions/index.ts';
import { LINES } from './lines/index.ts';
import { METHODS } from './methods/index.ts';
import { POWERS } from './powers/index.ts';
import { RATIOS } from './ratios/index.ts';
import { REFLECTIONS } from './reflections/index.ts';
import type { TopicId } from './topics.ts';
import { TRACEABILITY } from './traceability/index.ts';
import type { BankQuestion } from './types.ts';
import { VERDICTS } from './verdicts/index.ts';
import { VOLTS } from './volts/index.ts';

/** Every question, by topic. A page that needs one topic imports that topic's own index. */
export const BANK: Readonly<Record<TopicId, readonly BankQuestion[]>> = {
  ratios: RATIOS,
  volts: VOLTS,
  powers: POWERS,
  lines: LINES,
  reflections: REFLECTIONS,
  methods: METHODS,
  bands: BANDS,
  verdicts: VERDICTS,
  traceability: TRACEABILITY,
  cautions: CAUTIONS,
};

/** Every question. */
export const bankQuestions = (): readonly BankQuestion[] => Object.values(BANK).flat();

/** The question with an id. @throws RangeError for an id that none has. */
export function bankQuestion(id: string): BankQuestion {
  const found = bankQuestions().find((question) => question.id === id);
  if (found === undefined)
    throw new RangeError(`bankQuestion: no question has the id, got ${JSON.stringify(id)}`);
  return found;
}
