import { lineName, openLine } from './line.ts';

/** What the windows of a step tell each other about its fields: what stands in them now, or that one asks for it. */
export type Typed = { readonly step: number; readonly typed: readonly string[] } | { readonly asks: true };

/** Whether what came over the line is one of ours. */
export function isTyped(data: unknown): data is Typed {
  if (typeof data !== 'object' || data === null) return false;
  const { step, typed, asks } = data as Readonly<Record<string, unknown>>;
  if (asks === true) return true;
  return (
    Number.isSafeInteger(step) && Array.isArray(typed) && typed.every((text) => typeof text === 'string')
  );
}

/** What a hand on the wall does; what comes of it is drawn a little later. */
const HANDS = ['input', 'click', 'keyup', 'pointermove', 'pointerup', 'focusout'] as const;
/** Until a change is drawn in its field: at once for most, later where something is fetched first. */
const DRAWN_MS = [0, 400] as const;

const fieldsOf = (slide: Element | undefined): readonly HTMLInputElement[] => [
  ...(slide?.querySelectorAll<HTMLInputElement>('.slide-body input[type="text"]') ?? []),
];
const textsOf = (slide: Element | undefined): readonly string[] => fieldsOf(slide).map(({ value }) => value);

/** Puts texts into the fields of a slide as a hand would, so that all that hangs on them follows. */
function putInto(slide: Element | undefined, typed: readonly string[]): void {
  for (const [at, field] of fieldsOf(slide).entries()) {
    const text = typed[at];
    if (text === undefined || text === field.value) continue;
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
  }
}

/** Does something once a slide answers: before, what was typed into it would be lost. */
function onceAwake(slide: Element | undefined, act: () => void): void {
  const asleep = slide?.querySelector('astro-island[ssr]');
  if (asleep)
    asleep.addEventListener('astro:hydrate', () => setTimeout(() => onceAwake(slide, act)), { once: true });
  else act();
}

/** Keeps the numbers of a step the same in every window that shows it: on the wall, in the notes, in the frames of a talk. */
export function startMirror(slides: readonly Element[]): void {
  const known = slides.map((slide) => textsOf(slide).join('\n'));
  const changed = new Map<number, readonly string[]>();
  const line = openLine(`${lineName(location)}:numbers`, isTyped, (told) => {
    if ('asks' in told) {
      for (const [step, typed] of changed) line.tell({ step, typed });
      return;
    }
    const slide = slides[told.step];
    onceAwake(slide, () => {
      known[told.step] = told.typed.join('\n');
      changed.set(told.step, told.typed);
      putInto(slide, told.typed);
    });
  });
  const look = (): void =>
    slides.forEach((slide, step) => {
      const typed = textsOf(slide);
      if (typed.join('\n') === known[step]) return;
      known[step] = typed.join('\n');
      changed.set(step, typed);
      line.tell({ step, typed });
    });
  for (const hand of HANDS)
    addEventListener(hand, () => {
      for (const wait of DRAWN_MS) setTimeout(look, wait);
    });
  line.tell({ asks: true });
}
