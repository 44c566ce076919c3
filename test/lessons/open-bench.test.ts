import { describe, expect, it } from 'vitest';
import { decodeEntries } from '../../src/bench/address/address.ts';
import { benchLink } from '../../src/layouts/prose/open-bench.ts';
import { METHODS } from '../../src/sheet/method.ts';

const opened = (link: { readonly path: string }) => {
  const [page, fragment = ''] = link.path.split('#');
  return { page, ...decodeEntries(fragment) };
};

describe('the way from a lesson to the bench', () => {
  it.each(METHODS)('opens it by %s with readings and links filled in, and nothing unread', (method) => {
    const { page, entries, problems, carried } = opened(benchLink({ method, of: 'club' }));
    expect(page).toBe('/bench/');
    expect(problems).toEqual([]);
    expect(carried).toBe(true);
    expect(entries.method).toBe(method);
    expect(entries.points[0]?.readings).not.toBe('');
    expect(entries.points[0]?.frequency).toBe('3.58 MHz');
    expect(entries.links.length).toBeGreaterThan(0);
  });

  it('opens it with the club’s scope, load and volts as they are told', () => {
    const { entries } = opened(benchLink({ method: 'oscilloscope', of: 'club' }));
    expect(entries).toMatchObject({ load: '49.8 ohm', terminated: 'yes', drop: '' });
    expect(entries.points[0]?.readings.split('\n')).toEqual(['14.1', '14.2', '14.2']);
  });

  it('opens it with the sister where the oscilloscope is out of range', () => {
    const { entries } = opened(benchLink({ method: 'oscilloscope', of: 'sister' }));
    expect(entries.points[0]?.frequency).toBe('145 MHz');
  });

  it('says which method and whose numbers in its words', () => {
    expect(benchLink({ method: 'peakDetector', of: 'club' }).text).toBe(
      'Open the bench: peak detector and voltmeter, with the club’s numbers filled in',
    );
    expect(benchLink({ method: 'oscilloscope', of: 'sister' }).text).toContain('the sister’s numbers');
    expect(new Set(METHODS.map((method) => benchLink({ method, of: 'club' }).text)).size).toBe(
      METHODS.length,
    );
  });

  it('knows the sister by no other method', () => {
    expect(() => benchLink({ method: 'inLine', of: 'sister' })).toThrow(
      'benchLink: the sister must be measured by oscilloscope, got inLine',
    );
  });
});
