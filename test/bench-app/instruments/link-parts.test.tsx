import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { LinkAge } from '../../../src/bench/instruments/LinkParts.tsx';
import { demonstration } from '../../../src/bench/state/demonstration.ts';
import { reduceBench } from '../../../src/bench/state/state.ts';
import { LinkInstrument } from '../../../src/bench/views/LinkInstrument.tsx';
import { blankLink, type LinkEntries } from '../../../src/sheet/entries.ts';

const props = (link: Partial<LinkEntries>, day = '2026-05-09') => ({
  link: { ...blankLink('link1'), ...link },
  method: 'padsIntoMeter' as const,
  day,
  send: () => {},
  name: 'Pad A',
});

describe('the age of a link’s calibration', () => {
  const age = (link: Partial<LinkEntries>, day?: string): string => render(<LinkAge {...props(link, day)} />);

  it('is a warning where it is older than its interval on the day of the measurement', () => {
    expect(age({ calibrated: '2024-01-20', interval: '24' })).toMatch(/class="[^"]*problem">Calibrated on/);
    expect(age({ calibrated: '2024-01-20', interval: '24' }, '2025-01-01')).not.toContain('problem');
  });

  it('is told by the clock of the device where no day was noted', () => {
    expect(age({ calibrated: '2000-01-01', interval: '12' }, 'last week')).toContain('problem');
  });

  it('is nothing where no day of calibration is known', () => {
    expect(age({})).toBe('');
  });
});

describe('the part of a link for instruments', () => {
  it('is folded away under its name, with nothing of it fetched yet', () => {
    const html = render(<LinkInstrument {...props({})} />);
    expect(html).toMatch(/^<details class="folded link-more"><summary>From your instruments/);
    expect(html).toContain('for Pad A');
  });
});

describe('taking an instrument', () => {
  it('is one step of undo, and nothing at all where the sheet cannot take it', () => {
    const before = demonstration();
    const links = before.entries.links.slice(1);
    const after = reduceBench(before, { type: 'takeInstrument', taken: () => ({ links, load: '49.8' }) });
    expect(after.entries).toMatchObject({ links, load: '49.8' });
    expect(reduceBench(after, { type: 'undo' }).entries).toEqual(before.entries);
    expect(reduceBench(before, { type: 'takeInstrument', taken: () => undefined })).toBe(before);
  });
});
