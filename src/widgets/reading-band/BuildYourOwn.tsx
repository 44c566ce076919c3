import { useState } from 'preact/hooks';
import type { BuilderProps } from './Builder.tsx';
import { strings } from './strings.ts';

type Builder = (props: BuilderProps) => preact.JSX.Element;

/** The door to building a chain: its controls are fetched when somebody asks for them, as most readers only look and drag. */
export function BuildYourOwn(props: BuilderProps) {
  // its controls once they are there, until then what is told
  const [Controls, setControls] = useState<Builder | string>('');
  const open = (): void => {
    setControls(''); // what was told before is told again
    import('./Builder.tsx').then(
      // A function as state is handed over in a function: Preact would call it otherwise.
      ({ Builder }) => setControls(() => Builder),
      () => setControls(strings.lost),
    );
  };
  if (typeof Controls !== 'string') return <Controls {...props} />;
  return (
    <p class="needs-script">
      <button type="button" onClick={open}>
        {strings.build}
      </button>{' '}
      <span role="status">{Controls}</span>
    </p>
  );
}
