import { useId } from 'preact/hooks';
import { numberText } from '../text/quantity-text.ts';
import { type ResidualsDrawing, type ResidualsProps, residualsLayout } from './residuals.layout.ts';

export interface ResidualsViewProps extends ResidualsProps {
  /** What the upright axis and the other one give, with their units. */
  readonly words: { readonly up: string; readonly along: string };
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
}

/** Length of a tick's stub. */
const STUB = 5;

/** What a correction leaves over: points with bars about nothing, single values behind them, and the strip that the correction itself may be off by. */
export function Residuals(props: ResidualsViewProps) {
  const id = useId();
  const drawing = residualsLayout(props);
  const { measures } = drawing;
  return (
    <svg
      class={`plot plot-${props.frame}`}
      data-frame={props.frame}
      viewBox={`0 0 ${measures.width} ${measures.height}`}
      role="img"
      aria-labelledby={`${id}t`}
      aria-describedby={`${id}d`}
    >
      <title id={`${id}t`}>{props.name}</title>
      <desc id={`${id}d`}>{props.description}</desc>
      {drawing.band && <path class="band-strip" d={drawing.band} />}
      <Axes drawing={drawing} words={props.words} />
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
    </svg>
  );
}

function Axes({ drawing, words }: { drawing: ResidualsDrawing; words: ResidualsViewProps['words'] }) {
  const { measures, along, up, decimals, zeroY } = drawing;
  const [left, right] = measures.across;
  const [top, bottom] = measures.down;
  const stubs = `${along.map(({ place }) => `M${place} ${bottom}v${STUB}`).join('')}${up
    .map(({ place }) => `M${left} ${place}h${-STUB}`)
    .join('')}`;
  return (
    <g>
      <path class="plot-leader" d={`M${left} ${zeroY}H${right}`} />
      <path class="plot-axis" d={`M${left} ${top}V${bottom}H${right}${stubs}`} />
      {up.map(({ place, value }) => (
        <text
          key={value}
          x={left - 6 - measures.dotRadius}
          y={place + measures.labelDrop}
          class="plot-tick anchor-end"
        >
          {numberText('shown', { value, decimals: decimals.up })}
        </text>
      ))}
      {along.map(
        ({ place, value, named }) =>
          named && (
            <text key={value} x={place} y={bottom + measures.tickDrop} class="plot-tick anchor-middle">
              {numberText('shown', { value, decimals: decimals.along })}
            </text>
          ),
      )}
      <text x={2} y={top - measures.wordsRise} class="plot-unit">
        {words.up}
      </text>
      <text x={right} y={bottom + measures.wordsDrop} class="plot-unit anchor-end">
        {words.along}
      </text>
    </g>
  );
}
