import type { ComponentChild } from 'preact';
import type { CardFigure } from './content.ts';
import type { Drawn } from './drawn.ts';
import { boards, voltages } from './example-figures.tsx';
import type { FigureName } from './figure-names.ts';
import { lineBandFigures } from './line-band-figures.tsx';
import { plotFigures } from './plot-figures.tsx';
import { shapeFigures } from './shape-figures.tsx';

const figures: Readonly<Record<FigureName, Drawn>> = {
  ...lineBandFigures,
  ...plotFigures,
  ...shapeFigures,
  boards,
  voltages,
};

/** The figure of a card, in the form that a card has. */
export const figureFor = ({ name, given }: CardFigure): ComponentChild => figures[name](given);
