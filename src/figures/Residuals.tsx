import { NamedSvg } from './NamedSvg.tsx';
import { PlotAxes } from './PlotAxes.tsx';
import { type ResidualsProps, residualsLayout } from './residuals.layout.ts';

export interface ResidualsViewProps extends ResidualsProps {
  /** What the upright axis and the other one give, with their units. */
  readonly words: { readonly up: string; readonly along: string };
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
}

/**
 * What a correction leaves over: points with bars about nothing, single values behind them, and the strip that the correction itself
 * may be off by.
 */
export function Residuals(props: ResidualsViewProps) {
  const drawing = residualsLayout(props);
  const { measures } = drawing;
  return (
    <NamedSvg class={`plot plot-${props.frame}`} size={measures} of={props}>
      {drawing.band && <path class="band-strip" d={drawing.band} />}
      <PlotAxes drawing={drawing} words={props.words} />
      {drawing.points.map(({ x, y, bar }) => (
        <g key={x}>
          {bar && <path class="plot-casing" d={bar} />}
          {bar && <path class="plot-step" d={bar} />}
          <circle class="plot-point" cx={x} cy={y} r={measures.dotRadius} />
        </g>
      ))}
      {drawing.dots.map(({ x, y }) => (
        <circle key={`${x} ${y}`} class="plot-dot" cx={x} cy={y} r={measures.dotRadius / 2} />
      ))}
    </NamedSvg>
  );
}
