import { useMemo } from 'preact/hooks';
import { isolated } from '../../text/isolate.ts';
import { InTurn } from '../../widgets/parts/InTurn.tsx';
import { controlId, linkPath } from '../form/keys.ts';
import { LONGEST_LABEL } from '../read/spec.ts';
import { strings } from '../strings.ts';
import { LinkActions } from './LinkActions.tsx';
import { editLink, LinkField, type LinkProps } from './LinkField.tsx';
import { LinkInstrument } from './LinkInstrument.tsx';
import { LinkMore } from './LinkMore.tsx';
import { LinkStatement } from './LinkStatement.tsx';
import { LinkTerms } from './LinkTerms.tsx';

export interface LinkItemProps extends LinkProps {
  readonly position: number;
  readonly count: number;
  /** When it was measured, in the reader's own words. */
  readonly day: string;
  /** A new number draws every field again. */
  readonly drawing: number;
  /** How the item stands while a link is dragged: the one that is held, or the one beside which it would land. */
  readonly mark?: 'held' | 'before' | 'after' | undefined;
}

/** One link. Drawn again only if something of it has changed: an edit elsewhere finds the same node. */
export function LinkItem(props: LinkItemProps) {
  const { link, method, problems, send, day, drawing, position, count, mark } = props;
  return useMemo(
    () => <WholeLink {...{ link, method, problems, send, day, drawing, position, count, mark }} />,
    [link, method, problems, send, day, drawing, position, count, mark],
  );
}

/** Its name, loss, and what it may be wrong by in a line; the rest folded away; its place in the order. */
function WholeLink(props: LinkItemProps) {
  const { link, method, send, day, position, count, mark } = props;
  const name = isolated(link.label.trim()) || strings.link.unnamed(position);
  return (
    <li data-link={link.id} data-mark={mark}>
      {count > 1 && <span class="grip" data-grip={link.id} title={strings.link.grip} aria-hidden="true" />}
      <fieldset class="link" data-off={link.off ? '' : undefined}>
        <legend>
          <span class="link-number">{`${position}.`}</span> <span class="link-name">{name}</span>
          {link.off && <span class="link-mark">{strings.link.offMark}</span>}
          {link.assumed && <span class="link-mark">{strings.link.assumedMark}</span>}
        </legend>
        <div class="link-body">
          {link.assumed && <AssumedNote {...props} name={name} />}
          <div class="link-fields">
            <LinkField {...fieldProps(props)} name="label" maxLength={LONGEST_LABEL} class="link-label" />
            <LinkField {...fieldProps(props)} name="loss" class="link-number-field" />
            <LinkStatement {...fieldProps(props)} />
          </div>
          {link.form === 'terms' && <LinkTerms {...fieldProps(props)} name={name} />}
          {link.off && <p class="link-off-note">{strings.link.offNote}</p>}
          <InTurn>
            <div class="link-foot">
              <LinkMore {...fieldProps(props)} name={name} />
              <LinkInstrument link={link} method={method} day={day} send={send} name={name} />
              <OffSwitch {...props} />
              <LinkActions {...props} name={name} />
            </div>
          </InTurn>
        </div>
      </fieldset>
    </li>
  );
}

const fieldProps = ({ link, method, problems, send }: LinkProps): LinkProps => ({
  link,
  method,
  problems,
  send,
});

/** Leaves the link out for a what-if. */
function OffSwitch({ link, send }: LinkProps) {
  const id = controlId(linkPath(link.id, 'off'));
  return (
    <label class="switch link-off">
      <input
        type="checkbox"
        id={id}
        checked={link.off}
        onChange={(event) => send(editLink(link.id, 'off', { off: event.currentTarget.checked }))}
      />
      {strings.link.labels.off}
    </label>
  );
}

/** Says that a method brought this link's values, and takes the reader's word that a data sheet says the same. */
function AssumedNote({ link, send, name }: LinkProps & { name: string }) {
  return (
    <p class="assumed">
      {strings.link.assumedNote}{' '}
      <button
        type="button"
        class="plain"
        aria-label={strings.link.checkedOf(name)}
        onClick={() => send(editLink(link.id, 'amount', { amount: link.amount }))}
      >
        {strings.link.checked}
      </button>
    </p>
  );
}
