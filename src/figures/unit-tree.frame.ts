/** Where the tree stands: across the page, as an indented list on a phone, or on the wall. */
export type UnitTreeFrame = 'wide' | 'narrow' | 'stage' | 'card';

/** Measures in units of the figure's own view box. */
export interface UnitTreeMeasures {
  readonly width: number;
  /** A tree goes from left to right, a row for each end of a branch; a list goes downwards, a row for each node. */
  readonly form: 'tree' | 'list';
  /** From one step of the tree to the next. */
  readonly indent: number;
  /** Height of a row, and of one that can be pressed. */
  readonly row: number;
  readonly pressed: number;
  /** Height of a box, and width of the box of a unit with its own letters and with its name. */
  readonly box: number;
  readonly boxWidth: number;
  /** Room around everything, and from the left of a box to its letters. */
  readonly margin: number;
  readonly inset: number;
  /** From the middle of a line of letters to its baseline. */
  readonly drop: number;
  /** Half the length of a stroke of the sign that says whether a unit can be unfolded. */
  readonly stroke: number;
}

const WIDE: UnitTreeMeasures = {
  width: 984,
  form: 'tree',
  indent: 132,
  row: 44,
  pressed: 44,
  box: 32,
  boxWidth: 118,
  margin: 4,
  inset: 9,
  drop: 5.5,
  stroke: 5,
};

const MEASURES: Readonly<Record<UnitTreeFrame, UnitTreeMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    form: 'list',
    indent: 19,
    row: 33,
    pressed: 46,
    box: 28,
    boxWidth: 118,
    margin: 3,
    inset: 9,
    drop: 5,
    stroke: 5,
  },
  stage: {
    width: 1000,
    form: 'tree',
    indent: 176,
    row: 52,
    pressed: 52,
    box: 44,
    boxWidth: 126,
    margin: 4,
    inset: 12,
    drop: 12,
    stroke: 9,
  },
  // cards are drawn by the build alone: no reader's script carries their measures
  card: import.meta.env.SSR
    ? {
        width: 1080,
        form: 'tree',
        indent: 190,
        row: 46,
        pressed: 46,
        box: 42,
        boxWidth: 140,
        margin: 4,
        inset: 12,
        drop: 15,
        stroke: 9,
      }
    : WIDE,
};

export const unitTreeMeasures = (frame: UnitTreeFrame): UnitTreeMeasures => MEASURES[frame];
