import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestPath } from '../../src/address/nearest-path.ts';

const pages = [
  '/club/examples/one-diode/',
  '/club/examples/one-diode-two-levels/',
  '/club/examples/low-on-the-scale/',
  '/club/learn/measuring/peak-detector/',
];
const near = (pathname: string) => nearestPath(pathname, pages);

describe('the page that a damaged address was meant for', () => {
  it('is found behind what a reply put after it', () => {
    for (const tail of [')', '),', '/).', '/&quot;', '%22', '/%5D', '/index.htm'])
      expect(near(`/club/examples/low-on-the-scale${tail}`), tail).toBe(pages[2]);
    expect(near('/Club/Examples/Low-on-the-scale')).toBe(pages[2]);
  });

  it('is the longer one where two begin alike', () => {
    expect(near('/club/examples/one-diode-two-levels,')).toBe(pages[1]);
    expect(near('/club/examples/one-diode,')).toBe(pages[0]);
  });

  it('is found by what is left of a cut one, where that is of one page alone', () => {
    expect(near('/club/learn/measuring/peak-')).toBe(pages[3]);
    expect(near('/club/examples/low')).toBe(pages[2]);
    expect(near('/club/examples/one')).toBeUndefined();
    expect(near('/')).toBeUndefined();
  });

  it('is found by its own name, where the way there is another', () => {
    for (const way of [
      '/club//learn/measuring/',
      '/learn/',
      '/club/lern/measuring/',
      '/club/',
      '/elsewhere/Learn/',
    ])
      expect(near(`${way}peak-detector/`), way).toBe(pages[3]);
    expect(nearestPath('/watt/one/', ['/watt/learn/one/', '/watt/examples/one/'])).toBeUndefined();
  });

  it('is one of the pages or none, whatever is asked for', () => {
    fc.assert(
      fc.property(fc.string(), (asked) => {
        expect([undefined, ...pages]).toContain(near(asked));
      }),
    );
  });
});
