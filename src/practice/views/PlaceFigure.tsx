import type { PlaceDrawing } from '../place-parts.ts';

interface PlaceFigureProps {
  readonly name: string;
  readonly drawing: PlaceDrawing;
  /** The place that is chosen; empty for none. */
  readonly chosen: string;
  readonly onChoose?: ((id: string) => void) | undefined;
}

/** A figure with places to point at. A pointer is a second road: the list beside it says the same in words. */
export function PlaceFigure({ name, drawing, chosen, onChoose }: PlaceFigureProps) {
  const { width, height, strokes, letters, targets } = drawing;
  return (
    <svg class="places" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={name}>
      {targets.map(({ id, ...box }) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: a second road for a pointer; the list beside it is for everybody
        <rect
          key={id}
          class={id === chosen ? 'place place-chosen' : 'place'}
          rx="3"
          {...box}
          onClick={() => onChoose?.(id)}
        />
      ))}
      {strokes.map(({ path, as }) => (
        <path key={`${as} ${path}`} class={`place-${as}`} d={path} />
      ))}
      {letters.map(({ x, y, text, anchor, as }) => (
        <text key={`${x} ${y} ${text}`} class={`place-${as}`} x={x} y={y} text-anchor={anchor}>
          {text}
        </text>
      ))}
    </svg>
  );
}
