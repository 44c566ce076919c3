/** Simple figures with places to point at, as data. Every place of the question is one of the figure's, by id. */
export type Figure = RulerFigure | WaveFigure | ChainFigure | ZonesFigure;

/** A ruler with marked places. */
export interface RulerFigure {
  readonly figure: 'ruler';
  readonly name: string;
  readonly unit: 'dB' | 'dBm';
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly marks: readonly { readonly id: string; readonly label: string; readonly at: number }[];
}

/** One turn and a bit of a sine of height 1, with heights marked at a place along it. */
export interface WaveFigure {
  readonly figure: 'wave';
  readonly name: string;
  /** A height from `from` to `to` (1 is the crest, -1 the trough), drawn `turns` after the start. */
  readonly heights: readonly {
    readonly id: string;
    readonly label: string;
    readonly turns: number;
    readonly from: number;
    readonly to: number;
  }[];
}

/** Boxes in a row from the transmitter to the instrument. */
export interface ChainFigure {
  readonly figure: 'chain';
  readonly name: string;
  readonly boxes: readonly { readonly id: string; readonly label: string; readonly note: string }[];
}

/** A specification on an axis and readings with their bands. An absent limit is none. */
export interface ZonesFigure {
  readonly figure: 'zones';
  readonly name: string;
  readonly unit: 'dBm';
  readonly from: number;
  readonly to: number;
  readonly lower?: number;
  readonly upper?: number;
  readonly readings: readonly {
    readonly id: string;
    readonly label: string;
    readonly at: number;
    readonly halfWidth: number;
  }[];
}

/** Ids of the places of a figure, in the order drawn. */
export function placesOf(figure: Figure): readonly string[] {
  switch (figure.figure) {
    case 'ruler':
      return figure.marks.map(({ id }) => id);
    case 'wave':
      return figure.heights.map(({ id }) => id);
    case 'chain':
      return figure.boxes.map(({ id }) => id);
    case 'zones':
      return figure.readings.map(({ id }) => id);
  }
}
