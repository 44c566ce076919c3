import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { useLinkDrag } from '../../src/bench/views/use-link-drag.ts';
import { useBandDrag } from '../../src/widgets/parts/band-drag.ts';
import { useFigureDrag } from '../../src/widgets/parts/figure-drag.ts';
import { probe } from '../hooks/probe.ts';
import { stubWindow } from '../hooks/window.ts';

/** As much of an element as dragging asks for. */
class FakeElement {
  readonly dataset: Readonly<Record<string, string>>;
  readonly ownerSVGElement: FakeElement | undefined;
  constructor(dataset: Readonly<Record<string, string>>, svg?: FakeElement) {
    this.dataset = dataset;
    this.ownerSVGElement = svg;
  }
  closest = (): FakeElement => this;
  getScreenCTM = () => null;
  setPointerCapture = (): void => undefined;
  parentElement = { querySelector: () => null };
}

beforeEach(() => {
  const events = stubWindow();
  vi.stubGlobal('Element', FakeElement);
  vi.stubGlobal(
    'DOMMatrix',
    class {
      a = 1;
      e = 0;
    },
  );
  vi.stubGlobal('window', Object.assign(events, { innerHeight: 800, scrollBy: () => undefined }));
  vi.stubGlobal('requestAnimationFrame', () => 0);
  vi.stubGlobal('cancelAnimationFrame', () => undefined);
});
afterEach(() => vi.unstubAllGlobals());

const handle = new FakeElement(
  { handle: 'pad', end: '0', x: '0', y: '0', grip: 'pad' },
  new FakeElement({ frame: 'wide' }),
);

/** What a pointer does at a place; the first finger is the primary one. */
const by = (pointerId: number, place: number) =>
  ({
    target: handle,
    currentTarget: handle,
    pointerId,
    isPrimary: pointerId === 1,
    button: 0,
    clientX: place,
    clientY: place,
    preventDefault: () => undefined,
  }) as unknown as PointerEvent & { currentTarget: HTMLElement };

/** What was asked for, one after the other. */
function actions() {
  const done: string[] = [];
  const does = (what: string) => () => void done.push(what);
  return {
    done,
    grasp: does('grasp'),
    pull: does('pull'),
    release: does('release'),
    cancel: does('cancel'),
  };
}
const isFrame = (name: string | undefined): name is string => name === 'wide';

describe.each([
  ['a band', (acts: ReturnType<typeof actions>) => useBandDrag(acts).handlers],
  ['a figure', (acts: ReturnType<typeof actions>) => useFigureDrag({ ...acts, isFrame })],
])('a handle of %s', (_, use) => {
  it('follows the finger that holds it, and no other', async () => {
    const acts = actions();
    const { does, end } = await probe(() => use(acts));
    await does(({ onPointerDown }) => onPointerDown(by(1, 0)));
    await does(({ onPointerMove }) => onPointerMove(by(1, 10)));
    await does(({ onPointerDown, onPointerMove, onPointerUp, onPointerCancel }) => {
      onPointerDown(by(2, 50));
      onPointerMove(by(2, 90));
      onPointerUp(by(2, 90));
      onPointerCancel(by(2, 90));
    });
    expect(acts.done).toEqual(['grasp', 'pull']);
    await does(({ onPointerUp }) => onPointerUp(by(1, 10)));
    expect(acts.done).toEqual(['grasp', 'pull', 'release']);
    await does(({ onPointerMove }) => onPointerMove(by(1, 20)));
    expect(acts.done).toHaveLength(3);
    end();
  });

  it('goes back where the browser takes the finger away', async () => {
    const acts = actions();
    const { does, end } = await probe(() => use(acts));
    await does(({ onPointerDown }) => onPointerDown(by(1, 0)));
    await does(({ onPointerCancel }) => onPointerCancel(by(1, 0)));
    expect(acts.done).toEqual(['grasp', 'cancel']);
    end();
  });
});

describe('a link that is dragged', () => {
  const others = ['cable', 'meter'].map((link, place) => ({
    dataset: { link },
    getBoundingClientRect: () => ({ top: 100 * place + 90, bottom: 100 * place + 110 }),
  }));
  const list = { current: { querySelectorAll: () => others, querySelector: () => null } as never };

  it('lands where the finger that holds it lets go', async () => {
    const moves: string[] = [];
    const order = ['pad', 'cable', 'meter'];
    const move = (id: string, to: number) => void moves.push(`${id} to ${to}`);
    const { does, now, end } = await probe(() => useLinkDrag({ list, order, move }));
    await does(({ handlers }) => handlers.onPointerDown(by(1, 0)));
    await does(({ handlers }) => handlers.onPointerMove(by(1, 150)));
    await does(({ handlers }) => {
      handlers.onPointerMove(by(2, 500));
      handlers.onPointerUp(by(2, 500));
      handlers.onLostPointerCapture(by(2, 500));
    });
    expect(now().dragged).toEqual({ id: 'pad', from: 0, to: 1 });
    await does(({ handlers }) => handlers.onPointerUp(by(1, 150)));
    expect(moves).toEqual(['pad to 1']);
    end();
  });
});
