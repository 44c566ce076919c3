import { axisPowerText } from '../text/axis-text.ts';
import { numberText } from '../text/quantity-text.ts';
import type { Style } from '../text/style.ts';
import { stubs } from './level-axis.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { ReadingBandRow } from './ReadingBandRow.tsx';
import { readingBandLayout } from './reading-band.layout.ts';
import type { BandDrawing, BandProps } from './reading-band.types.ts';
import { still } from './still.ts';

export interface ReadingBandProps extends BandProps {
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
  /** Its coordinates, where they are not those of its frame. */
  readonly drawing?: BandDrawing;
  /** How numbers are written; as on the page unless given. */
  readonly numbers?: Style;
}

/**
 * The reading band along the calibration chain: a rung for each comparison, a band on one common axis, decibels below and
 * watts above. Hard end marks are the worst case, the filled strip the expanded uncertainty, the thin curve the whole
 * distribution, each curve drawn to the same height. A group with `data-handle` marks where a pointer may take hold.
 */
export function ReadingBand(props: ReadingBandProps) {
  const { drawing = readingBandLayout(props), numbers = 'shown' } = props;
  const { scale: _, rows, ...ground } = drawing;
  const { width, height, measures } = drawing;
  return (
    <NamedSvg class={`band band-${props.frame}`} size={{ width, height }} of={props}>
      <Ground drawing={{ ...ground, rows: rows.map(({ y }) => ({ y })) }} numbers={numbers} />
      {rows.map((row) => (
        <ReadingBandRow key={row.row.id} drawing={row} measures={measures} />
      ))}
    </NamedSvg>
  );
}

/** What the rows are drawn on. */
interface GroundDrawing extends Omit<BandDrawing, 'rows' | 'scale'> {
  readonly rows: readonly { readonly y: number }[];
}

/** Axes and rail, which stand still while an end of a strip is pulled. */
const Ground = still(({ drawing, numbers }: { drawing: GroundDrawing; numbers: Style }) => (
  <>
    <Axes drawing={drawing} numbers={numbers} />
    <Rail drawing={drawing} />
  </>
));

function Axes({ drawing, numbers }: { drawing: GroundDrawing; numbers: Style }) {
  const { axisTop, axisBottom, measures, centreX, levels, powers, specification } = drawing;
  const [x0, x1] = measures.axis;
  const unit = unitPlace(measures);
  const power = axisPowerText(
    powers.map(({ value }) => value),
    numbers,
  );
  return (
    <g class="band-axes">
      <path class="band-centre" d={`M${centreX} ${axisTop}V${axisBottom}`} />
      <path
        class="band-axis"
        d={`M${x0} ${axisTop}H${x1}M${x0} ${axisBottom}H${x1}${stubs(powers, axisTop, -6)}${stubs(levels, axisBottom, 6)}`}
      />
      {powers.map(
        (tick, index) =>
          tick.named && (
            <text key={tick.value} x={tick.x} y={axisTop - 12} class="band-tick">
              {power.texts[index]}
            </text>
          ),
      )}
      <text x={unit.x} y={unit.above(axisTop)} class={unit.className}>
        {power.unit}
      </text>
      {levels.map(
        (tick) =>
          tick.named && (
            <text key={tick.value} x={tick.x} y={axisBottom + measures.tickDrop} class="band-tick">
              {numberText(numbers, { value: tick.value, decimals: tick.decimals })}
            </text>
          ),
      )}
      <text x={unit.x} y={unit.below(axisBottom)} class={unit.className}>
        dBm
      </text>
      <SpecificationLine x={specification.lower} side="lower" drawing={drawing} />
      <SpecificationLine x={specification.upper} side="upper" drawing={drawing} />
    </g>
  );
}

/** Where a unit is written: beyond the end of its axis where there is room, else on a line of its own. */
function unitPlace({ axis, unitBeside, tickDrop, tickRoom }: BandDrawing['measures']) {
  const below = (y: number): number => y + tickDrop + (unitBeside ? 0 : 18);
  const above = (y: number): number => y - (unitBeside ? 12 : 30);
  return unitBeside
    ? { x: axis[1] + tickRoom / 2, className: 'band-unit', above, below }
    : { x: axis[1], className: 'band-unit anchor-end', above, below };
}

/** A limit of the specification: a firm line with short barbs that point to the side where values conform. */
function SpecificationLine({
  x,
  side,
  drawing,
}: {
  x: number | undefined;
  side: 'lower' | 'upper';
  drawing: GroundDrawing;
}) {
  if (x === undefined) return null;
  const { axisTop, axisBottom, measures } = drawing;
  const inward = side === 'lower' ? 7 : -7;
  if (measures.stripY > measures.detailY)
    return <path class="band-specification" d={besideStrips(x, inward, drawing)} />;
  const barbs = [0.2, 0.4, 0.6, 0.8]
    .map((share) => `M${x} ${axisTop + (axisBottom - axisTop) * share}l${inward} 5`)
    .join('');
  return <path class="band-specification" d={`M${x} ${axisTop}V${axisBottom}${barbs}`} />;
}

/** Where the words of a row stand above its strip, the line keeps to the strips: it would strike the words through. */
function besideStrips(x: number, inward: number, { rows, measures }: GroundDrawing): string {
  const above = measures.stripY - measures.detailY - 7;
  const below = measures.rowPitch - measures.stripY + measures.labelY - 15;
  return rows
    .map(({ y }) => `M${x} ${y + measures.stripY - above}v${above + below}m0 ${-below}l${inward} 5`)
    .join('');
}

/** The line that joins the rungs, from the definition down to the transmitter. */
function Rail({ drawing }: { drawing: GroundDrawing }) {
  const { rows, measures } = drawing;
  const x = measures.labelX - 18 > 0 ? measures.labelX - 18 : 6;
  const ys = rows.map(({ y }) => y + measures.labelY - measures.knotRise);
  const first = ys[0];
  const last = ys.at(-1);
  if (first === undefined || last === undefined) return null;
  return (
    <g class="band-rail">
      <path class="band-axis" d={`M${x} ${first}V${last}`} />
      {ys.map((y, index) => (
        <circle
          key={y}
          cx={x}
          cy={y}
          r={index === rows.length - 1 ? 7 : 4.5}
          class={index === rows.length - 1 ? 'band-foot' : 'band-knot'}
        />
      ))}
    </g>
  );
}
