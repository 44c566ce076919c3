import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Sheet } from '../../sheet/sheet.ts';
import { TextField } from '../parts/TextField.tsx';
import { builder } from './builder-strings.ts';
import { addRung, isOwn, LONGEST_NAME, MOST_OWN, type OwnForm, withName, withoutRung } from './own-rungs.ts';
import type { BandAction } from './state.ts';

export interface BuilderProps {
  readonly sheet: Sheet;
  readonly send: (action: BandAction) => void;
}

/** Takes rungs out, adds others next to the transmitter, and names them. */
export function Builder({ sheet, send }: BuilderProps) {
  const own = sheet.links.filter(isOwn);
  const first = useRef<HTMLElement>(null);
  // The button that was pressed is gone: the focus goes on to what came in its place.
  useLayoutEffect(() => first.current?.focus(), []);
  const replace = (changed: Sheet): void => send({ type: 'replace', sheet: changed });
  const add = (form: OwnForm): void => replace(addRung(sheet, { form, name: builder.own(own.length + 1) }));
  return (
    <section class="builder needs-script" ref={first} tabIndex={-1} aria-label={builder.building}>
      <p>
        <strong>{builder.building}</strong>
      </p>
      <ul>
        {sheet.links.map((link) => (
          <li key={link.id}>
            {isOwn(link) ? (
              <TextField
                id={`name-${link.id}`}
                label={builder.name(own.indexOf(link) + 1)}
                value={link.label}
                maxLength={LONGEST_NAME}
                onText={(name) => replace(withName(sheet, link.id, name))}
              />
            ) : (
              <span>{link.label}</span>
            )}
            <button
              type="button"
              aria-label={builder.take(link.said ?? link.label)}
              onClick={() => replace(withoutRung(sheet, link.id))}
            >
              {builder.takeShort}
            </button>
          </li>
        ))}
      </ul>
      {own.length < MOST_OWN ? (
        <p class="builder-add">
          <button type="button" onClick={() => add('limits')}>
            {builder.addLimits}
          </button>
          <button type="button" onClick={() => add('expanded')}>
            {builder.addCertificate}
          </button>
        </p>
      ) : (
        <p>{builder.full}</p>
      )}
    </section>
  );
}
