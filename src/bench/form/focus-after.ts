import type { SheetEntries } from '../../sheet/entries.ts';
import type { BenchAction } from '../state/actions.ts';
import { controlId, linkPath, pointPath } from './keys.ts';

/** Ids of controls of the form that belong to no field. */
export const FORM_CONTROLS = {
  addLink: controlId('add-link'),
  addPoint: controlId('add-point'),
  undo: controlId('undo'),
  redo: controlId('redo'),
} as const;

/** What a link's buttons do. */
export type LinkAction = 'up' | 'down' | 'duplicate' | 'remove';

/** Id of a button of a link. */
export const actionId = (id: string, action: LinkAction): string => controlId(linkPath(id, action));
/** Id of the button that shows a point. */
export const pointButtonId = (id: string): string => controlId(pointPath(id, 'show'));

/** What is shown before and after an action. */
export interface Shown {
  readonly entries: SheetEntries;
  readonly point: string;
  /** Number of the drawing of all fields. */
  readonly drawing?: number;
}

/**
 * Ids of the controls to which the focus should go after an action, the best first: what was added, the button that was pressed, the
 * neighbour of what was taken away. None where the focus is well where it is.
 */
export function focusAfter(action: BenchAction, before: Shown, after: Shown): readonly string[] {
  switch (action.type) {
    case 'add':
    case 'duplicate':
      return newLinkLabel(before, after);
    case 'remove':
      return neighbours(action.id, before);
    case 'move':
      return movedButtons(action.id, before, after);
    case 'addPoint':
      return [controlId(pointPath(after.point, 'label'))];
    case 'removePoint':
      return [pointButtonId(after.point), FORM_CONTROLS.addPoint];
    case 'undo':
      return [FORM_CONTROLS.undo, FORM_CONTROLS.redo];
    case 'redo':
      return [FORM_CONTROLS.redo, FORM_CONTROLS.undo];
    case 'fresh':
      return [controlId('title')];
    default:
      return [];
  }
}

function newLinkLabel(before: Shown, after: Shown): readonly string[] {
  const known = new Set(before.entries.links.map(({ id }) => id));
  return after.entries.links
    .filter(({ id }) => !known.has(id))
    .map(({ id }) => controlId(linkPath(id, 'label')));
}

function neighbours(id: string, { entries: { links } }: Shown): readonly string[] {
  const index = links.findIndex((link) => link.id === id);
  return [links[index + 1], links[index - 1]]
    .flatMap((link) => (link ? [actionId(link.id, 'remove')] : []))
    .concat(FORM_CONTROLS.addLink);
}

function movedButtons(id: string, before: Shown, after: Shown): readonly string[] {
  const place = ({ entries }: Shown): number => entries.links.findIndex((link) => link.id === id);
  const order = place(after) < place(before) ? (['up', 'down'] as const) : (['down', 'up'] as const);
  return order.map((action) => actionId(id, action));
}
