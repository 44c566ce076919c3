import { NamedSvg } from './NamedSvg.tsx';
import { RulerLane } from './RulerLane.tsx';
import { RulerRow } from './RulerRow.tsx';
import { rulersLayout } from './rulers.layout.ts';
import type { RulersDrawing, RulersProps } from './rulers.types.ts';

export interface RulersFigureProps extends RulersProps {
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
}

/**
 * Rulers one below the other, with lanes of steps or points above them, bands on them and lines across them. Each ruler is
 * even in the unit of its own domain: on a common domain they are one length read three ways, on domains of their own they
 * show what is even on one and lopsided on another. A group with `data-handle` marks where a pointer may take hold.
 */
export function Rulers(props: RulersFigureProps) {
  const drawing = rulersLayout(props);
  const { width, height, measures } = drawing;
  return (
    <NamedSvg class={`band rulers band-${props.frame}`} size={{ width, height }} of={props}>
      <Fan drawing={drawing} />
      {drawing.needles.map(({ x, handle }) => (
        <path
          key={handle ?? 'compared'}
          class={handle === undefined ? 'ruler-compared' : 'ruler-needle'}
          d={`M${x} ${drawing.needleTop}V${drawing.needleBottom}`}
        />
      ))}
      {drawing.rulers.map((ruler) => (
        <RulerRow key={ruler.ruler.id} drawing={ruler} measures={measures} />
      ))}
      {drawing.lanes.map((lane) => (
        <RulerLane key={lane.lane.id} drawing={lane} measures={measures} />
      ))}
      {drawing.needles.map(
        ({ x, handle }) =>
          handle !== undefined && (
            <g
              key={handle}
              data-handle={handle}
              data-end={x}
              class="band-handle"
              transform={`translate(${x} ${drawing.needleBottom + measures.knobRadius})`}
            >
              <circle class="band-grip" r={25} />
              <circle class="band-knob" r={measures.knobRadius} />
            </g>
          ),
      )}
    </NamedSvg>
  );
}

/** Lines from the ends of a band on one ruler to its ends on the next: the same band, wherever it is read. */
function Fan({ drawing: { rulers, measures } }: { drawing: RulersDrawing }) {
  const lines = rulers.slice(1).map((next, index) => {
    const above = rulers[index];
    if (!(above?.strip && next.strip)) return '';
    const from = above.y + measures.axisY;
    const to = next.y + measures.axisY - measures.stripHeight;
    const line = (a: number, b: number): string => `M${a} ${from}L${b} ${to}`;
    return (
      line(above.strip.x, next.strip.x) +
      line(above.strip.x + above.strip.width, next.strip.x + next.strip.width)
    );
  });
  return lines.join('') === '' ? null : <path class="ruler-fan" d={lines.join('')} />;
}
