import { type ComponentChild, h, render } from 'preact';
import { act } from 'preact/test-utils';

/** A hook in use, without a page: what it gives is at hand, and nothing is drawn. */
export interface Probe<Of> {
  /** What the hook gave when it was last drawn. */
  readonly now: () => Of;
  /** Does something, and waits until what follows from it is drawn and its effects have run. */
  readonly does: (what: (now: Of) => unknown) => Promise<void>;
  readonly end: () => void;
}

/** Preact asks whether it is to draw into the document itself; where there is none, it is not. */
function drawn(node: ComponentChild, place: Element): void {
  const isAlone = !('document' in globalThis);
  if (isAlone) Object.assign(globalThis, { document: undefined });
  try {
    render(node, place);
  } finally {
    if (isAlone) Reflect.deleteProperty(globalThis, 'document');
  }
}

/** As much of an element as Preact needs to draw nothing in it. */
const nowhere = (): Element =>
  ({ nodeType: 1, childNodes: [], firstChild: null, namespaceURI: '' }) as unknown as Element;

/** Uses a hook as a component would. `around` puts what it needs around it, a context say. */
export async function probe<Of>(
  use: () => Of,
  around: (inner: ComponentChild) => ComponentChild = (inner) => inner,
): Promise<Probe<Of>> {
  const place = nowhere();
  let latest: { readonly of: Of } | undefined;
  const Inner = () => {
    latest = { of: use() };
    return null;
  };
  await act(() => drawn(around(h(Inner, {})), place));
  const now = (): Of => {
    if (latest === undefined) throw new Error('probe: the hook must have been drawn');
    return latest.of;
  };
  return {
    now,
    does: (what) =>
      act(async () => {
        await what(now());
      }),
    end: () => drawn(null, place),
  };
}
