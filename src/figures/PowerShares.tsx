import { useId } from 'preact/hooks';
import { aloud } from '../text/aloud.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { powerSharesLayout, SHARES, type ShareRow } from './power-shares.layout.ts';

export interface PowerSharesProps {
  readonly rows: readonly ShareRow[];
  /** The same rows with their labels as they are spoken. */
  readonly spoken: readonly ShareRow[];
  readonly name: string;
}

/** What goes in, divided into what becomes of it: filled is what is wanted, hatched the rest. */
export function PowerShares({ rows, spoken, name }: PowerSharesProps) {
  const id = useId();
  const drawing = powerSharesLayout(rows);
  return (
    <NamedSvg
      class="plot plot-shares"
      size={{ width: SHARES.width, height: drawing.height }}
      of={{
        name,
        description: aloud(
          spoken.flatMap(({ label, first, second }) => [label, `${first.label}; ${second.label}`]),
        ),
      }}
    >
      <pattern id={`${id}h`} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path class="plot-hatch" d="M0 0V6" />
      </pattern>
      {drawing.rows.map(({ row, y, first, second }) => (
        <g key={row.id}>
          <text x={SHARES.axis[0]} y={y + SHARES.labelY} class="plot-strong">
            {row.label}
          </text>
          <rect
            class="plot-dot"
            x={first.x}
            y={y + SHARES.barY}
            width={first.width}
            height={SHARES.barHeight}
          />
          <rect
            fill={`url(#${id}h)`}
            x={second.x}
            y={y + SHARES.barY}
            width={second.width}
            height={SHARES.barHeight}
          />
          <path
            class="plot-axis"
            d={`M${SHARES.axis[0]} ${y + SHARES.barY}H${SHARES.axis[1]}v${SHARES.barHeight}H${SHARES.axis[0]}Z`}
          />
          <text x={SHARES.axis[0]} y={y + SHARES.partY}>
            {row.first.label}
          </text>
          <text x={SHARES.axis[1]} y={y + SHARES.partY} class="anchor-end">
            {row.second.label}
          </text>
        </g>
      ))}
    </NamedSvg>
  );
}
