import { defaultState } from '../address/field-spec.ts';
import { BlockStack } from '../figures/BlockStack.tsx';
import { Envelope } from '../figures/Envelope.tsx';
import { LevelDiagram } from '../figures/LevelDiagram.tsx';
import { Rulers } from '../figures/Rulers.tsx';
import { Trace } from '../figures/Trace.tsx';
import { UnitTree } from '../figures/UnitTree.tsx';
import { VerdictBand } from '../figures/VerdictBand.tsx';
import { wholeClaimOf } from '../sheet/evaluated-blocks.ts';
import { bandFigure } from '../widgets/band-rulers/rulers.ts';
import { bandRulersSpec } from '../widgets/band-rulers/spec.ts';
import { figureOf as envelope, meantMark } from '../widgets/envelope/figure.ts';
import { keyedSpec } from '../widgets/envelope/spec.ts';
import { strings as envelopeStrings } from '../widgets/envelope/strings.ts';
import { envelopeLabels } from '../widgets/envelope/words.ts';
import { figureOf as blocks } from '../widgets/gauge-blocks/figure.ts';
import { blocksSpec, comparisonOf } from '../widgets/gauge-blocks/spec.ts';
import { strings as blocksStrings } from '../widgets/gauge-blocks/strings.ts';
import { figureOf as stairs } from '../widgets/level-diagram/figure.ts';
import { stairsSpec } from '../widgets/level-diagram/spec.ts';
import { ratioFigure } from '../widgets/ratio-ruler/rulers.ts';
import { PREPARED_DB } from '../widgets/ratio-ruler/spec.ts';
import { initialState } from '../widgets/ratio-ruler/state.ts';
import { figureOf as trace } from '../widgets/trace/figure.ts';
import { traceSpec } from '../widgets/trace/spec.ts';
import { strings as traceStrings } from '../widgets/trace/strings.ts';
import { traceLabels } from '../widgets/trace/words.ts';
import { signalsFigure } from '../widgets/two-signals/rulers.ts';
import { signalsSpec } from '../widgets/two-signals/spec.ts';
import { openedTo, treeSpec } from '../widgets/unit-tree/spec.ts';
import { drawnTree } from '../widgets/unit-tree/words.ts';
import { figureOf as verdict } from '../widgets/verdict/figure.ts';
import { verdictSpec } from '../widgets/verdict/spec.ts';
import { strings as verdictStrings } from '../widgets/verdict/strings.ts';
import { begun, type Drawn, onCard } from './drawn.ts';

/** Units that are unfolded: what else is in a watt does not fit a card. */
const UNFOLDED = 4;

/** Figures on rulers, of waves and levels, of units and blocks, by the tag that lessons show them by. */
export const plotFigures = {
  BandRulersFigure: (given) => (
    <Rulers {...onCard} lanes={[]} needles={[]} {...bandFigure(begun(bandRulersSpec, given))} />
  ),
  // of their rulers and lanes a card has room for these
  TwoSignalsFigure: () => {
    const { rulers, ...figure } = signalsFigure(defaultState(signalsSpec.fields));
    return <Rulers {...onCard} {...figure} rulers={rulers.slice(0, 1)} />;
  },
  RatioFigure: () => {
    const { rulers, lanes, ...figure } = ratioFigure(initialState(PREPARED_DB));
    return <Rulers {...onCard} {...figure} lanes={lanes.slice(0, 2)} rulers={rulers.slice(0, 2)} />;
  },
  StairsFigure: (given) => <LevelDiagram {...onCard} {...stairs(begun(stairsSpec, given))} />,
  TraceFigure: (given) => {
    const state = begun(traceSpec, given);
    return (
      <Trace {...onCard} {...trace(state)} labels={traceLabels(state.values)} axes={traceStrings.axes} />
    );
  },
  EnvelopeFigure: (given) => {
    const state = begun(keyedSpec, given);
    const { values } = state;
    return (
      <Envelope
        {...onCard}
        {...envelope(state)}
        labels={envelopeLabels(values)}
        meant={meantMark(values)}
        axes={envelopeStrings.axes}
      />
    );
  },
  UnitTreeFigure: () => (
    <UnitTree {...onCard} root={drawnTree(openedTo(defaultState(treeSpec.fields), UNFOLDED), 'short')} />
  ),
  BlocksFigure: (given) => {
    const state = begun(blocksSpec, given);
    const whole = wholeClaimOf(comparisonOf(state.values));
    return <BlockStack {...onCard} {...blocks(state, whole)} words={blocksStrings.figure} />;
  },
  VerdictFigure: (given) => {
    const state = begun(verdictSpec, given);
    const along = verdictStrings.along[state.values.item];
    return <VerdictBand {...onCard} {...verdict(state)} along={along} />;
  },
} as const satisfies Readonly<Record<string, Drawn>>;
