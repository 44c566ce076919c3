import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { type UnitName, unitNames } from '../../src/text/units.ts';
import { NumberField } from '../../src/widgets/parts/NumberField.tsx';
import { SelectField } from '../../src/widgets/parts/SelectField.tsx';
import { BARE } from '../text/bare-symbols.ts';

const field = (unit: UnitName, of?: string): string =>
  render(
    <NumberField
      label="Loss"
      shown="3"
      unit={unit}
      of={of}
      read={async () => ({ ok: true, value: 3 })}
      onValue={() => {}}
    />,
  );

/** Texts of what a control is described by, in order. */
function describedBy(html: string): readonly string[] {
  const ids = /aria-describedby="([^"]*)"/.exec(html)?.[1]?.split(' ') ?? [];
  return ids.map((id) => {
    const found = new RegExp(`id="${id}"[^>]*>([^<]*)<`).exec(html);
    if (found === null) throw new Error(`describedBy: wish something with the id ${id}`);
    return found[1] ?? '';
  });
}

describe('the unit of a number that is typed', () => {
  it('is seen as a symbol, and heard in words as what the field is described by', () => {
    const html = field('dBm');
    expect(html).toMatch(/aria-hidden="true"[^>]*>dBm</);
    expect(describedBy(html)).toEqual(['decibel-milliwatts', '']);
  });

  it('says what a percentage is of, seen and heard', () => {
    const html = field('percent', ' of power');
    expect(html).toContain('>% of power<');
    expect(describedBy(html)).toEqual(['percent of power', '']);
  });

  it.each(unitNames())('has a word for %s', (unit) => {
    expect(`2 ${describedBy(field(unit))[0]}`).not.toMatch(BARE);
  });

  it('is nothing where the number has none', () => {
    expect(describedBy(field('none'))).toEqual(['', '']);
  });
});

describe('a choice', () => {
  const choice = (rest: { help?: string; about?: string }): string =>
    render(
      <>
        <SelectField
          id="c"
          label="Kind"
          value="a"
          options={['a']}
          words={{ a: 'A' }}
          onChoice={() => {}}
          {...rest}
        />
        <p id="more">More of it</p>
      </>,
    );

  it('is described by its help and by what stands elsewhere', () => {
    expect(describedBy(choice({ help: 'Help.', about: 'more' }))).toEqual(['Help.', 'More of it']);
    expect(describedBy(choice({ help: 'Help.' }))).toEqual(['Help.']);
    expect(describedBy(choice({ about: 'more' }))).toEqual(['More of it']);
  });

  it('is described by nothing where there is nothing', () => {
    expect(choice({})).not.toContain('aria-describedby');
  });
});
