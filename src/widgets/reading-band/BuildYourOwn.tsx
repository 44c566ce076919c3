import { useState } from 'preact/hooks';
import type { BuilderProps } from './Builder.tsx';
import { strings } from './strings.ts';

type Builder = (props: BuilderProps) => preact.JSX.Element;

/** The door to building a chain: its controls are fetched when somebody asks for them, as most readers only look and drag. */
export function BuildYourOwn(props: BuilderProps) {
  const [Controls, setControls] = useState<Builder | undefined>(undefined);
  const [told, tell] = useState('');
  const open = (): void => {
    tell('');
    import('./Builder.tsx').then(
      // A function as state is handed over in a function: Preact would call it otherwise.
      ({ Builder }) => setControls(() => Builder),
      () => tell(strings.lost),
    );
  };
  if (Controls) return <Controls {...props} />;
  return (
    <p class="needs-script">
      <button type="button" onClick={open}>
        {strings.build}
      </button>{' '}
      <span role="status">{told}</span>
    </p>
  );
}
