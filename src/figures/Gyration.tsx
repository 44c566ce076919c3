import { numberText } from '../text/quantity-text.ts';
import { type GyrationDrawing, type GyrationProps, gyrationLayout, type Pair } from './gyration.layout.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { PullHandle } from './PullHandle.tsx';

/** Words in the figure, each with its numbers. */
export interface GyrationWords {
  readonly bar: string;
  readonly lumps: string;
  readonly strip: string;
  /** What the axis gives, with its unit. */
  readonly axis: string;
}

export interface GyrationViewProps extends GyrationProps {
  readonly words: GyrationWords;
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
  /** Whether the stated number can be pulled. */
  readonly handle?: boolean;
}

/** Length of a tick's stub. */
const STUB = 5;

/**
 * A bar as thick as values are likely, and the two lumps of the same weight that are as hard to twirl about its middle: they sit at
 * the standard uncertainty. Below, the strip of twice that. What somebody says instead is dashed.
 */
export function Gyration(props: GyrationViewProps) {
  const drawing = gyrationLayout(props);
  const { measures, middle, ends, outline } = drawing;
  const { bar, axis, rod } = measures;
  return (
    <NamedSvg class={`plot plot-${props.frame}`} size={measures} of={props}>
      <path class="plot-fill" d={outline} />
      <path class="plot-axis" d={outline} />
      <path class="plot-leader" d={`M${middle} ${bar[0]}V${axis}`} />
      {ends && <path class="plot-leader" d={ends.map((x) => `M${x} ${bar[1]}V${axis}`).join('')} />}
      <Strips drawing={drawing} />
      <Lumps drawing={drawing} />
      <circle class="plot-point" cx={middle} cy={bar[1]} r={measures.lumpRadius / 2} />
      <circle class="plot-point" cx={middle} cy={rod} r={measures.lumpRadius / 2} />
      <Words drawing={drawing} words={props.words} />
      {props.handle && (
        <PullHandle id="at" along="x" x={drawing.handleX} y={axis} radius={measures.handleRadius} />
      )}
    </NamedSvg>
  );
}

interface PartProps {
  readonly drawing: GyrationDrawing;
}

/** The strip of k = 2, and as an outline the one that somebody says. */
function Strips({ drawing: { measures, strip, saidStrip } }: PartProps) {
  const box = ([left, right]: Pair) => ({
    x: left,
    y: measures.strip - measures.stripHalf,
    width: right - left,
    height: 2 * measures.stripHalf,
  });
  return (
    <g>
      <rect class="band-strip" {...box(strip)} />
      {saidStrip && <rect class="plot-rim" {...box(saidStrip)} />}
      {saidStrip && <rect class="plot-ghost band-ghost" {...box(saidStrip)} />}
    </g>
  );
}

/** Two lumps on their rod, and as outlines those that somebody says. */
function Lumps({ drawing: { measures, lumps, saidLumps } }: PartProps) {
  const { rod, lumpRadius } = measures;
  return (
    <g>
      <path class="plot-step" d={`M${lumps[0]} ${rod}H${lumps[1]}`} />
      {lumps.map((x) => (
        <circle key={x} class="plot-dot" cx={x} cy={rod} r={lumpRadius} />
      ))}
      {saidLumps?.map((x) => (
        <circle key={x} class="plot-ghost" cx={x} cy={rod} r={lumpRadius + 3} />
      ))}
    </g>
  );
}

/** What each part is, above it, and the axis with its numbers. */
function Words({ drawing, words }: PartProps & { readonly words: GyrationWords }) {
  const { measures, ticks, decimals } = drawing;
  const { across, axis, rise, bar, rod, strip, stripHalf } = measures;
  const stubs = ticks.map(({ x }) => `M${x} ${axis}v${STUB}`).join('');
  return (
    <g>
      <path class="plot-axis" d={`M${across[0]} ${axis}H${across[1]}${stubs}`} />
      <text class="anchor-start" x={2} y={bar[0] - rise.bar}>
        {words.bar}
      </text>
      <text class="anchor-start" x={2} y={rod - rise.rod}>
        {words.lumps}
      </text>
      <text class="anchor-start" x={2} y={strip - stripHalf - rise.strip / 2}>
        {words.strip}
      </text>
      {ticks.map(
        ({ x, value, named }) =>
          named && (
            <text key={value} x={x} y={axis + measures.tickDrop} class="plot-tick anchor-middle">
              {numberText('shown', { value, decimals })}
            </text>
          ),
      )}
      <text x={across[1]} y={axis + measures.wordsDrop} class="plot-unit anchor-end">
        {words.axis}
      </text>
    </g>
  );
}
