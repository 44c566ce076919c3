import { afterEach, describe, expect, it, vi } from 'vitest';
import { signedNow } from '../../src/practice/signed-now.ts';
import { AS_WRITTEN } from '../../src/practice/use-sign.ts';
import { chooseDecimal, DECIMAL_KEY } from '../../src/store/decimal.ts';
import { storage } from '../store/any-storage.ts';
import { allSittings, typedSitting } from './sittings.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  chooseDecimal('point');
});

describe('questions and texts', () => {
  it('are as they were written while the reader’s sign is a point', () => {
    vi.stubGlobal('localStorage', storage());
    expect(signedNow()).toBe(AS_WRITTEN);
    for (const sitting of allSittings) expect(AS_WRITTEN.seen(sitting)).toBe(sitting);
    expect(AS_WRITTEN.say('2.5 dB less.')).toBe('2.5 dB less.');
  });

  it('have a comma once that is kept as the reader’s choice', () => {
    vi.stubGlobal('localStorage', storage({ [DECIMAL_KEY]: 'comma' }));
    const { seen, say } = signedNow();
    expect(say('2.5 dB less.')).toBe('2,5 dB less.');
    const { payload } = seen(typedSitting);
    expect(payload).toMatchObject({ answer: '7,0 dBm', within: 'within 0,1 dB' });
  });
});
