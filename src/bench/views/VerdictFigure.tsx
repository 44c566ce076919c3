import { VerdictZones } from '../../figures/VerdictZones.tsx';
import { verdictLabel } from '../../text/words.ts';
import type { NumberedPoint } from '../results/point-result.ts';
import { demandText } from '../words/measured-words.ts';
import { resultStrings } from '../words/result-strings.ts';
import { summarise } from '../words/result-words.ts';
import { shownWords } from '../words/verdict-words.ts';

/** The verdict as a picture: zones among the limits, hatched where this measurement cannot tell. */
export function VerdictFigure({ shown }: { shown: NumberedPoint }) {
  const { judgement, chain } = shown.result;
  const { lower, upper } = chain.sheet.specification;
  return (
    <VerdictZones
      estimate={chain.result.estimate}
      judgement={judgement}
      specification={{ lower: lower ?? Number.NEGATIVE_INFINITY, upper: upper ?? Number.POSITIVE_INFINITY }}
      names={{
        inside: shownWords(verdictLabel('inside')),
        outside: shownWords(verdictLabel('outside')),
        'cant-tell': shownWords(verdictLabel('cant-tell')),
      }}
      name={resultStrings.verdict.zonesName}
      description={`${summarise(shown)} ${demandText('spoken', shown.point)}`}
    />
  );
}
