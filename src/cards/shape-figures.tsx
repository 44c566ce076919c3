import { defaultState } from '../address/field-spec.ts';
import { Gyration } from '../figures/Gyration.tsx';
import { LaidLengths } from '../figures/LaidLengths.tsx';
import { Shape } from '../figures/Shape.tsx';
import { wholeSumOf } from '../sheet/evaluated-link-sum.ts';
import { wholeRowOf } from '../sheet/evaluated-pads.ts';
import { foundMeanOf } from '../sheet/evaluated-readings.ts';
import { triedOf } from '../sheet/tried.ts';
import { figureOf as readings } from '../widgets/few-readings/figure.ts';
import { readingsSpec, repeatedOf } from '../widgets/few-readings/spec.ts';
import { strings as readingsStrings } from '../widgets/few-readings/strings.ts';
import { figureOf as linkSum } from '../widgets/link-sum/figure.ts';
import { linkSumSpec, sumOf } from '../widgets/link-sum/spec.ts';
import { strings as linkSumStrings } from '../widgets/link-sum/strings.ts';
import { figureOf as row } from '../widgets/pads-in-a-row/figure.ts';
import { type Lay, type RowFields, rowOf, rowSpec } from '../widgets/pads-in-a-row/spec.ts';
import { figureWords as rowWords } from '../widgets/pads-in-a-row/words.ts';
import type { FieldsState } from '../widgets/parts/fields.ts';
import { figureOf as stated } from '../widgets/stated/figure.ts';
import { statedSpec } from '../widgets/stated/spec.ts';
import { figureWords as statedWords } from '../widgets/stated/words.ts';
import { axesOf, figureOf as tries } from '../widgets/tries/figure.ts';
import { orderOf, triesSpec } from '../widgets/tries/spec.ts';
import { begun, type Drawn, onCard } from './drawn.ts';

/** Parts laid in a row: end to end, or at right angles. */
const rowFigure =
  (lay: Lay): Drawn =>
  (given) =>
    rowOfParts(lay, begun<RowFields>(rowSpec(lay), given));

/** The row of a state. What its bars are stands in the words above the figure. */
export function rowOfParts(lay: Lay, state: FieldsState<RowFields>) {
  const whole = wholeRowOf(rowOf(state.values));
  const { axis } = rowWords(lay, state.values, whole);
  return <LaidLengths {...onCard} {...row(lay, state, whole)} words={{ first: '', second: '', axis }} />;
}

/** Figures of distributions, and of parts that are laid in a row, by the tag that lessons show them by, with how it is laid where there are two. */
export const shapeFigures = {
  'RowFigure straight': rowFigure('straight'),
  'RowFigure angles': rowFigure('angles'),
  LinkSumFigure: (given) => {
    const state = begun(linkSumSpec, given);
    const whole = wholeSumOf(sumOf(state.values));
    return <Shape {...onCard} {...linkSum(state, whole)} words={linkSumStrings.axes} />;
  },
  StatedFigure: (given) => {
    const state = begun(statedSpec, given);
    return <Gyration {...onCard} {...stated(state)} words={statedWords(state.values)} />;
  },
  TriesFigure: (given) => {
    const { values } = begun(triesSpec, given);
    const tried = triedOf(orderOf(values));
    return <Shape {...onCard} {...tries(tried, values.interval)} words={axesOf(tried.order)} />;
  },
  ReadingsFigure: () => {
    const found = foundMeanOf(repeatedOf(defaultState(readingsSpec.fields)));
    return <Shape {...onCard} {...readings(found)} words={readingsStrings.axes} />;
  },
} as const satisfies Readonly<Record<string, Drawn>>;
