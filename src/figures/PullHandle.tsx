/** A pointer may take hold this far around the middle of a handle: 44 px across where the figure is smallest. */
const GRIP_RADIUS = 25;

export interface PullHandleProps {
  readonly id: string;
  /** Its place in the figure. */
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** Which way it moves. */
  readonly along?: 'x' | 'y';
}

/** A knob that can be pulled. Every handle has a labelled control elsewhere: it is a second road to the same number. */
export function PullHandle({ id, x, y, radius, along = 'y' }: PullHandleProps) {
  return (
    <g data-handle={id} data-x={x} data-y={y} class={`pull pull-${along}`} transform={`translate(${x} ${y})`}>
      <circle class="pull-grip" r={GRIP_RADIUS} />
      <circle class="pull-knob" r={radius} />
    </g>
  );
}
