import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { normalDensity } from '#compute';
import { defaultState } from '../../src/address/field-spec.ts';
import { BlockStack } from '../../src/figures/BlockStack.tsx';
import { blockMeasures } from '../../src/figures/block-stack.frame.ts';
import { DistributionCurve } from '../../src/figures/DistributionCurve.tsx';
import { CURVE } from '../../src/figures/distribution-curve.frame.ts';
import { Envelope } from '../../src/figures/Envelope.tsx';
import { envelopeMeasures } from '../../src/figures/envelope.frame.ts';
import { Gyration } from '../../src/figures/Gyration.tsx';
import { gyrationMeasures } from '../../src/figures/gyration.frame.ts';
import { LaidLengths } from '../../src/figures/LaidLengths.tsx';
import { LevelDiagram } from '../../src/figures/LevelDiagram.tsx';
import { LineBand } from '../../src/figures/LineBand.tsx';
import { laidMeasures } from '../../src/figures/laid-lengths.frame.ts';
import { levelMeasures } from '../../src/figures/level-diagram.frame.ts';
import { lineBandMeasures } from '../../src/figures/line-band.frame.ts';
import { PointsChart } from '../../src/figures/PointsChart.tsx';
import { CHART } from '../../src/figures/points-chart.frame.ts';
import type { ChartPoint } from '../../src/figures/points-chart.types.ts';
import { Rulers } from '../../src/figures/Rulers.tsx';
import { rulersMeasuresOf } from '../../src/figures/rulers.frame.ts';
import { TileLine } from '../../src/figures/TileLine.tsx';
import { Trace } from '../../src/figures/Trace.tsx';
import { MOST_TILES, tileMeasuresOf } from '../../src/figures/tile-line.layout.ts';
import { traceMeasures } from '../../src/figures/trace.frame.ts';
import { VerdictBand } from '../../src/figures/VerdictBand.tsx';
import { verdictBandMeasures } from '../../src/figures/verdict-band.frame.ts';
import { wholeRowOf } from '../../src/sheet/evaluated-pads.ts';
import { MEANINGS, SLIPS } from '../../src/sheet/stated.ts';
import { figureOf as envelopeFigure, meantMark } from '../../src/widgets/envelope/figure.ts';
import { keyedSpec } from '../../src/widgets/envelope/spec.ts';
import { strings as envelopeStrings } from '../../src/widgets/envelope/strings.ts';
import { envelopeLabels } from '../../src/widgets/envelope/words.ts';
import { figureOf as blocksFigure } from '../../src/widgets/gauge-blocks/figure.ts';
import { type BlocksFields, blocksSpec } from '../../src/widgets/gauge-blocks/spec.ts';
import { strings as blocksStrings } from '../../src/widgets/gauge-blocks/strings.ts';
import { figureOf as stairsFigure } from '../../src/widgets/level-diagram/figure.ts';
import { stairsSpec } from '../../src/widgets/level-diagram/spec.ts';
import { lineOf } from '../../src/widgets/level-line/state.ts';
import { tilesOf } from '../../src/widgets/level-line/words.ts';
import { figureOf as meterFigure } from '../../src/widgets/own-meter/figure.ts';
import { meterSpec } from '../../src/widgets/own-meter/spec.ts';
import { strings as meterStrings } from '../../src/widgets/own-meter/strings.ts';
import { figureOf as rowFigure } from '../../src/widgets/pads-in-a-row/figure.ts';
import { LAYS, type RowFields, rowOf, rowSpec } from '../../src/widgets/pads-in-a-row/spec.ts';
import { figureWords as rowWords } from '../../src/widgets/pads-in-a-row/words.ts';
import { fieldsState } from '../../src/widgets/parts/fields.ts';
import { figureOf as statedFigure } from '../../src/widgets/stated/figure.ts';
import { statedSpec } from '../../src/widgets/stated/spec.ts';
import { figureWords as statedWords } from '../../src/widgets/stated/words.ts';
import { figureOf as traceFigure } from '../../src/widgets/trace/figure.ts';
import { traceSpec } from '../../src/widgets/trace/spec.ts';
import { strings as traceStrings } from '../../src/widgets/trace/strings.ts';
import { traceLabels } from '../../src/widgets/trace/words.ts';
import { figureOf as verdictFigure } from '../../src/widgets/verdict/figure.ts';
import { type VerdictFields, verdictSpec } from '../../src/widgets/verdict/spec.ts';
import { strings as verdictStrings } from '../../src/widgets/verdict/strings.ts';
import { drawnTexts, letterRules, letterSize, outsideOf, touching } from './drawn-text.ts';
import { rulerStates } from './ruler-states.ts';

type Frame = 'wide' | 'narrow';
const FRAMES = ['wide', 'narrow'] as const satisfies readonly Frame[];
const words = { name: 'The figure', description: 'What it shows' };
const still = { before: undefined, held: undefined, touched: false };

/** Letters of each family of figures by frame, as the style sheets have them. */
const plotSize = (frame: Frame): number =>
  letterSize(frame === 'narrow' ? '.plot-narrow text' : '.plot text');
const bandSize = (frame: Frame): number =>
  letterSize(frame === 'narrow' ? '.rulers.band-narrow .ruler-number' : '.ruler-number');
const tileSize = (frame: Frame): number =>
  letterSize(frame === 'narrow' ? '.band-narrow .tile-text' : '.tile-text');

/** The least margin of the page, 0.9 rem on a phone: so far the numbers at the ends of an axis may reach out of their figure. */
const MARGIN = 0.9 * 16;

/** Nothing is written into anything else, and nothing is cut off. */
function expectLegible(markup: string, how: Parameters<typeof drawnTexts>[1], room = 1): void {
  const texts = drawnTexts(markup, how);
  expect(texts.length).toBeGreaterThan(2);
  expect(touching(texts)).toEqual([]);
  expect(outsideOf(markup, texts, room)).toEqual([]);
}

describe('letters on a phone of 320 pixels', () => {
  /** What is left of 320 pixels between the margins of the page (base.css). */
  const ROOM = 320 - 2 * MARGIN;

  it('are at least 12 pixels high in every narrow figure, whatever rule sets them', () => {
    const widths = {
      trace: traceMeasures('narrow').width,
      envelope: envelopeMeasures('narrow').width,
      stairs: levelMeasures('narrow').width,
      line: lineBandMeasures('narrow').width,
      verdict: verdictBandMeasures('narrow').width,
      blocks: blockMeasures('narrow').width,
      bar: gyrationMeasures('narrow').width,
      laid: laidMeasures('narrow').width,
      tiles: tileMeasuresOf('narrow').width,
      rulers: rulersMeasuresOf('narrow').width,
      chart: CHART.narrow.width,
      curve: CURVE.narrow.width,
    };
    expect(letterRules().length).toBeGreaterThan(20);
    for (const [name, width] of Object.entries(widths))
      for (const [selector, px] of letterRules())
        expect((px * ROOM) / width, `${name}: ${selector}`).toBeGreaterThanOrEqual(12);
  });

  it('are of the size that the rulers reckon the room of their numbers with', () => {
    for (const frame of FRAMES) expect(rulersMeasuresOf(frame).fontSize).toBe(bandSize(frame));
    expect(rulersMeasuresOf('stage').fontSize).toBe(letterSize('.rulers.band-stage text'));
  });
});

describe.each(FRAMES)('nothing is written into anything else, %s:', (frame) => {
  const trace = defaultState(traceSpec.fields);
  it.each(['sine', 'square', 'triangle'] as const)('the trace of a %s', (wave) => {
    for (const slip of ['none', 'wholeAsRms', 'peakAsRms', 'probe'] as const) {
      const values = { ...trace, wave, slip };
      const markup = render(
        <Trace
          frame={frame}
          {...traceFigure({ values, ...still })}
          labels={traceLabels(values)}
          axes={traceStrings.axes}
          {...words}
        />,
      );
      expectLegible(markup, { size: plotSize(frame) });
    }
  });

  const keyed = defaultState(keyedSpec.fields);
  it.each(['keyDown', 'stringOfDits', 'parisWord', 'twoEqualTones'] as const)(
    'the envelope of %s',
    (keying) => {
      for (const slip of ['none', 'meanAsPeak', 'twiceTheMean'] as const) {
        const values = { ...keyed, keying, slip };
        const markup = render(
          <Envelope
            frame={frame}
            {...envelopeFigure({ values, ...still })}
            labels={envelopeLabels(values)}
            meant={meantMark(values)}
            axes={envelopeStrings.axes}
            {...words}
            handle
          />,
        );
        expectLegible(markup, { size: plotSize(frame) });
      }
    },
  );

  const stairs = defaultState(stairsSpec.fields);
  it.each([
    ['pads', {}],
    ['an amplifier', { amplifier: 10 }],
    ['an antenna', { end: 'antenna', antenna: 5 }],
    ['a slip', { slip: 'forgotten' }],
  ] as const)('the level diagram with %s', (_what, now) => {
    const figure = stairsFigure({ values: { ...stairs, ...now }, ...still });
    expectLegible(render(<LevelDiagram frame={frame} {...figure} {...words} />), { size: plotSize(frame) });
  });

  const meter = defaultState(meterSpec.fields);
  it.each(['asRead', 'corrected', 'adjusted'] as const)('the line of a meter %s', (treatment) => {
    for (const months of [0, 6, 36]) {
      const figure = meterFigure(fieldsState<typeof meterSpec.fields>({ ...meter, treatment, months }));
      const markup = render(
        <LineBand frame={frame} {...figure} words={meterStrings.axes} {...words} handle />,
      );
      expectLegible(markup, { size: plotSize(frame) });
    }
  });

  it.each(LAYS)('pads in a row, laid %s', (lay) => {
    for (const count of [2, 8])
      for (const pad of [0.05, 1])
        for (const claim of ['none', 'root'] as const)
          for (const says of ['limits', 'certificate'] as const) {
            const values = { ...defaultState(rowSpec(lay).fields), count, pad, claim, says, meter: 0.05 };
            const whole = wholeRowOf(rowOf(values));
            const figure = rowFigure(lay, fieldsState<RowFields>(values), whole);
            const markup = render(
              <LaidLengths
                frame={frame}
                {...figure}
                words={rowWords(lay, values, whole)}
                {...words}
                handle
              />,
            );
            expectLegible(markup, { size: plotSize(frame) }, MARGIN);
          }
  });

  const stated = defaultState(statedSpec.fields);
  it.each(MEANINGS)('the bar and its lumps, %s', (meaning) => {
    for (const halfWidth of [0.05, 0.5, 3])
      for (const slip of SLIPS) {
        const values = { ...stated, meaning, halfWidth, slip };
        const figure = statedFigure(fieldsState<typeof statedSpec.fields>(values));
        const markup = render(
          <Gyration frame={frame} {...figure} words={statedWords(values)} {...words} handle />,
        );
        expectLegible(markup, { size: plotSize(frame) }, MARGIN);
      }
  });

  const verdict = defaultState(verdictSpec.fields);
  it.each(['transmitter', 'diode', 'container', 'resistors'] as const)('the bands of a %s', (item) => {
    for (const rule of ['simple', 'guardBand', 'probability'] as const)
      for (const expanded of [0.05, 0.3, 0.69, 2]) {
        const values = { ...verdict, item, rule, expanded, lower: 26.5, upper: 27.5 };
        const figure = verdictFigure(fieldsState<VerdictFields>(values));
        const along = verdictStrings.along[item];
        const markup = render(<VerdictBand frame={frame} {...figure} along={along} {...words} handle />);
        expectLegible(markup, { size: plotSize(frame) });
      }
  });

  const blocks = defaultState(blocksSpec.fields);
  it.each([1, 2, 3, 4])('the ends of a stack of %i', (count) => {
    for (const stackC of [15, 20, 22, 35])
      for (const known of ['nominal', 'grade', 'shared'] as const) {
        const values = { ...blocks, count, stackC, known };
        const figure = blocksFigure(fieldsState<BlocksFields>(values));
        const markup = render(
          <BlockStack frame={frame} {...figure} words={blocksStrings.figure} {...words} handle />,
        );
        expectLegible(markup, { size: plotSize(frame) }, MARGIN);
      }
  });

  it.each(Object.keys(rulerStates))('the rulers, %s', (state) => {
    const figure = rulerStates[state]?.();
    if (!figure) throw new Error('wish a named state');
    expectLegible(render(<Rulers frame={frame} {...figure} {...words} />), {
      size: bandSize(frame),
      middle: /band-tick/,
    });
  });

  it('a full line of tiles, of the longest numbers that there are', () => {
    const { tiles } = lineOf(
      Array.from({ length: MOST_TILES }, () => ({ kind: 'gain' as const, value: -20.5 })),
    );
    const markup = render(<TileLine frame={frame} tiles={tilesOf(tiles)} nothing="nothing" {...words} />);
    expectLegible(markup, { size: tileSize(frame), middle: /tile-text/ });
  });

  const level = fc.integer({ min: 150, max: 300 }).map((tenths) => tenths / 10);
  const word = fc.constantFrom('inside', 'outside', 'can’t tell', 'out of range');
  const point = fc
    .record({
      label: fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 60 }),
      word,
      estimate: level,
      half: fc.double({ min: 0.05, max: 5, noNaN: true }),
      room: fc.integer({ min: 1, max: 6 }),
    })
    .map(
      ({ label, word, estimate, half, room }): ChartPoint => ({
        id: '',
        label: label.replace(/[<>&"]/g, 'x'),
        word,
        band: { lower: estimate - half, upper: estimate + half, estimate },
        specification: { lower: estimate - room, upper: estimate + room },
      }),
    );

  it('the chart over points, whatever they are called and wherever they lie', () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 1, maxLength: 6 }), (points) => {
        const named = points.map((one, index) => ({ ...one, id: `p${index}` }));
        const markup = render(<PointsChart frame={frame} points={named} {...words} />);
        expectLegible(markup, { size: letterSize('.points-chart text'), middle: /^$/ }, MARGIN);
      }),
    );
  });

  it('the curve of a distribution, wherever its limits lie', () => {
    fc.assert(
      fc.property(
        level,
        fc.double({ min: 0.02, max: 3, noNaN: true }),
        level,
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (centre, u, lower, width) => {
          const curve = Array.from({ length: 81 }, (_, index) => {
            const z = (index - 40) / 10;
            return { x: centre + z * u, density: normalDensity(z) / u };
          });
          const markup = render(
            <DistributionCurve
              frame={frame}
              curve={curve}
              interval={{ lower: centre - 2 * u, upper: centre + 2 * u }}
              estimate={centre}
              specification={{ lower, upper: lower + width }}
              names={{ inside: 'inside', outside: 'outside' }}
              {...words}
            />,
          );
          expectLegible(markup, { size: letterSize('.curve text'), middle: /^$/ }, MARGIN);
        },
      ),
    );
  });
});
