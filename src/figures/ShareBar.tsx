import { SHARE_BAR, shareBarLayout } from './share-bar.layout.ts';

/** A share of a whole as a bar in a frame. The number stands beside it: nothing here is for the ear. */
export function ShareBar({ share }: { share: number }) {
  const { width, height, line } = SHARE_BAR;
  return (
    <svg class="share-bar" viewBox={`0 0 ${width} ${height}`} aria-hidden="true" focusable="false">
      <rect class="share-bar-frame" x={line / 2} y={line / 2} width={width - line} height={height - line} />
      <rect x={line} y={line} width={shareBarLayout(share).width} height={height - 2 * line} />
    </svg>
  );
}
