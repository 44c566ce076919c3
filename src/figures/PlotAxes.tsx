import { numberText } from '../text/quantity-text.ts';
import type { LineBandDrawing } from './line-band.layout.ts';

/** Length of a tick's stub. */
const STUB = 5;

interface PlotAxesProps {
  readonly drawing: Pick<LineBandDrawing, 'measures' | 'along' | 'up' | 'decimals' | 'zeroY'>;
  /** What the upright axis and the other one give, with their units. */
  readonly words: { readonly up: string; readonly along: string };
}

/** Both axes of a plot of deviations, with their ticks and names, and the line at zero. */
export function PlotAxes({ drawing, words }: PlotAxesProps) {
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
