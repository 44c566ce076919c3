/** A corner of the path, in the unit of the lengths. */
export interface Corner {
  readonly x: number;
  readonly y: number;
}

/**
 * Lengths laid at right angles one after another: the first along, each next at a right angle to the straight line from the start to
 * where one has come, turning left. How far the last corner is from the start is the root of the sum of all squares.
 * @returns the corners, the start first.
 */
export function rightAngles(lengths: readonly number[]): readonly Corner[] {
  const corners: Corner[] = [{ x: 0, y: 0 }];
  let at: Corner = { x: 0, y: 0 };
  for (const length of lengths) {
    const far = Math.hypot(at.x, at.y);
    const along = far === 0 ? { x: 1, y: 0 } : { x: -at.y / far, y: at.x / far };
    at = { x: at.x + length * along.x, y: at.y + length * along.y };
    corners.push(at);
  }
  return corners;
}

/** The box around corners. */
export interface CornerBox {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
}

/** The smallest upright box that holds corners. */
export function boxOf(corners: readonly Corner[]): CornerBox {
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  return { left, bottom, width: Math.max(...xs) - left, height: Math.max(...ys) - bottom };
}
