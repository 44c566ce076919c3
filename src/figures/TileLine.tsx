import { NamedSvg } from './NamedSvg.tsx';
import {
  type TileDrawing,
  type TileLineProps,
  type TileMeasures,
  tileLineLayout,
} from './tile-line.layout.ts';

export interface TileLineFigureProps extends TileLineProps {
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
}

/**
 * A sum as a line of tiles: levels are boxes on a base, gains point onwards; beneath each tile stands what the line comes to
 * up to there. A group with `data-handle` marks where a pointer may take hold.
 */
export function TileLine(props: TileLineFigureProps) {
  const { measures, tiles } = tileLineLayout(props);
  return (
    <NamedSvg class={`band rulers tiles band-${props.frame}`} size={measures} of={props}>
      {tiles.map((tile) => (
        <TileFigure key={tile.tile.id} drawing={tile} measures={measures} nothing={props.nothing} />
      ))}
    </NamedSvg>
  );
}

function TileFigure({
  drawing,
  measures,
  nothing,
}: {
  drawing: TileDrawing;
  measures: TileMeasures;
  nothing: string;
}) {
  const { tile, middle, outline } = drawing;
  const { top, tileHeight, rows, running } = measures;
  const line = (text: string, y: number, strong = false) => (
    <text x={middle} y={y} class={strong ? 'tile-text tile-strong' : 'tile-text'}>
      {text}
    </text>
  );
  return (
    <g>
      <g data-handle={tile.id} data-end={middle} class="band-handle tile">
        <path class={`tile-outline tile-${tile.shape}`} d={outline} />
        {line(tile.word, top + rows[0])}
        {line(tile.number, top + rows[1], true)}
        {line(tile.unit, top + rows[2])}
      </g>
      <path class="band-axis" d={`M${middle} ${top + tileHeight + 4}v${measures.tileHeight / 6}`} />
      {tile.running ? line(tile.running.number, running[0], true) : line(nothing, running[0])}
      {tile.running && line(tile.running.unit, running[1])}
    </g>
  );
}
