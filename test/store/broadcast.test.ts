import { afterEach, describe, expect, it, vi } from 'vitest';
import { openLine } from '../../src/stage/line.ts';
import { channelOf } from '../../src/store/channel.ts';

afterEach(() => vi.unstubAllGlobals());

/** As a browser does that is told to keep nothing. */
class Refused {
  constructor() {
    throw new DOMException('not here', 'SecurityError');
  }
}

describe.each([
  ['has no channels', undefined],
  ['refuses them', Refused],
])('a browser that %s', (_, channel) => {
  it('leaves each tab with what it keeps itself', () => {
    vi.stubGlobal('BroadcastChannel', channel);
    const alone = channelOf('sheets');
    expect(() => {
      alone.listen(() => undefined)();
      alone.tell({ id: 'a', revision: 1 });
      alone.close();
    }).not.toThrow();
  });

  it('leaves the wall without its notes, and working', () => {
    vi.stubGlobal('BroadcastChannel', channel);
    const line = openLine(
      'a',
      (_data): _data is string => true,
      () => undefined,
    );
    expect(() => {
      line.tell('step');
      line.close();
    }).not.toThrow();
  });
});
