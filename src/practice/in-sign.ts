import type { Payload } from '../questions/bank/types.ts';
import { shownText } from '../text/shown-text.ts';
import type { Decimal } from '../text/style.ts';
import type { ShownSitting } from './shown.ts';

type Say = (text: string) => string;

/** What can be chosen, ordered or typed, in other letters; what counts stays as it is. */
function payloadIn(payload: Payload, say: Say): Payload {
  switch (payload.kind) {
    case 'choice':
      return { ...payload, options: payload.options.map((each) => ({ ...each, text: say(each.text) })) };
    case 'place':
      return { ...payload, places: payload.places.map((each) => ({ ...each, words: say(each.words) })) };
    case 'typed':
      return { ...payload, within: say(payload.within), answer: say(payload.answer) };
    case 'order':
      return {
        ...payload,
        first: say(payload.first),
        last: say(payload.last),
        items: payload.items.map((each) => ({ ...each, text: say(each.text) })),
      };
  }
}

/**
 * A question as it is shown to a reader with this decimal sign. Only for showing: it is marked, and kept, as it was drawn. Replies are
 * made by the mark and take their sign where they are shown.
 */
export function inSign(sitting: ShownSitting, decimal: Decimal): ShownSitting {
  if (decimal === 'point') return sitting;
  const say: Say = (text) => shownText(text, decimal);
  const { stem, worked, right, payload, drawing } = sitting;
  return {
    ...sitting,
    stem: say(stem),
    worked: worked.map(say),
    right: say(right),
    payload: payloadIn(payload, say),
    ...(drawing && {
      drawing: { ...drawing, letters: drawing.letters.map((each) => ({ ...each, text: say(each.text) })) },
    }),
  };
}
