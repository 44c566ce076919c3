import { type LineBandDrawing, type LineBandProps, lineBandLayout } from './line-band.layout.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { PlotAxes } from './PlotAxes.tsx';
import { PullHandle } from './PullHandle.tsx';

/** Words in the figure. */
export interface LineBandWords {
  /** What the upright axis and the other one give, with their units. */
  readonly up: string;
  readonly along: string;
  /** Name of the limit lines, and of the edge where a method ends, if there are such. */
  readonly limit?: string;
  readonly edge?: string;
}

export interface LineBandViewProps extends LineBandProps {
  readonly words: LineBandWords;
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
  /** Whether the place that is looked at can be pulled along. */
  readonly handle?: boolean;
}

/** Half the length of a barb on a limit line. */
const BARB = 7;

/**
 * A line of what is there over a quantity, within a band of what may be claimed; limits as firm lines with barbs, points of a table
 * with their bars, another band as a dashed outline.
 */
export function LineBand(props: LineBandViewProps) {
  const drawing = lineBandLayout(props);
  const { measures, at } = drawing;
  return (
    <NamedSvg class={`plot plot-${props.frame}`} size={measures} of={props}>
      {drawing.band && <path class="band-strip" d={drawing.band} />}
      {drawing.ghost && <path class="plot-rim" d={drawing.ghost} />}
      {drawing.ghost && <path class="band-ghost" d={drawing.ghost} />}
      <PlotAxes drawing={drawing} words={props.words} />
      {drawing.limits && (
        <Limits
          limits={drawing.limits}
          measures={measures}
          words={props.words.limit}
          named={props.limitNamed ?? 'end'}
        />
      )}
      {drawing.edge && <Edge edge={drawing.edge} measures={measures} words={props.words.edge} />}
      <path class="plot-casing" d={drawing.line} />
      <path class="plot-step" d={drawing.line} />
      {drawing.bars.map(({ x, y, path }) => (
        <g key={x}>
          <path class="plot-casing" d={path} />
          <path class="plot-step" d={path} />
          <circle class="plot-point" cx={x} cy={y} r={measures.dotRadius} />
        </g>
      ))}
      <path class="plot-leader" d={`M${at.x} ${at.y}V${measures.down[1]}`} />
      {at.known && <circle class="plot-here" cx={at.x} cy={at.y} r={measures.dotRadius + 2} />}
      {props.handle && (
        <PullHandle id="at" along="x" x={at.x} y={measures.down[1]} radius={measures.handleRadius} />
      )}
    </NamedSvg>
  );
}

interface LimitsProps {
  readonly limits: NonNullable<LineBandDrawing['limits']>;
  readonly measures: LineBandDrawing['measures'];
  readonly words: string | undefined;
  readonly named: 'start' | 'end';
}

interface EdgeProps {
  readonly edge: NonNullable<LineBandDrawing['edge']>;
  readonly measures: LineBandDrawing['measures'];
  readonly words: string | undefined;
}

/** Where a method ends: a firm upright line, named. */
function Edge({ edge: { x, wordsX, ends }, measures, words }: EdgeProps) {
  const [top, bottom] = measures.down;
  return (
    <g>
      <path class="plot-limit" d={`M${x} ${top}V${bottom}`} />
      <text x={wordsX} y={top + measures.limitDrop} class={ends ? 'plot-cased anchor-end' : 'plot-cased'}>
        {words}
      </text>
    </g>
  );
}

/** Limits: firm lines whose barbs point to the side that is allowed, the lower one named. */
function Limits({ limits, measures, words, named }: LimitsProps) {
  const [left, right] = measures.across;
  const at = [0.12, 0.37, 0.63, 0.88].map((share) => left + (right - left) * share);
  const line = (y: number, inward: number): string =>
    `M${left} ${y}H${right}${at.map((x) => `M${x} ${y}l5 ${inward}`).join('')}`;
  const path = line(limits.upper, BARB) + line(limits.lower, -BARB);
  const atEnd = named === 'end';
  return (
    <g>
      <path class="plot-casing" d={path} />
      <path class="band-specification" d={path} />
      <text
        x={atEnd ? right : left + measures.limitIndent}
        y={limits.lower + measures.limitDrop}
        class={atEnd ? 'plot-cased anchor-end' : 'plot-cased'}
      >
        {words}
      </text>
    </g>
  );
}
