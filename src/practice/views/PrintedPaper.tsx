import type { ShownSitting } from '../shown.ts';
import { strings } from '../strings.ts';
import { PlaceFigure } from './PlaceFigure.tsx';
import { WorkedLines } from './Solution.tsx';

interface PrintedProps {
  readonly seed: number;
  /** Topics that it was drawn from, by their titles; empty for all. */
  readonly topics: readonly string[];
  readonly sittings: readonly ShownSitting[];
}

/** A paper to be answered with a pencil. */
export const PrintedPaper = ({ seed, topics, sittings }: PrintedProps) => (
  <section class="printed" aria-labelledby={`paper-${seed}`}>
    <h2 id={`paper-${seed}`}>{strings.worksheet.heading(seed)}</h2>
    <p class="printed-name">{strings.worksheet.name}</p>
    <ol class="paper">
      {sittings.map((sitting) => (
        <li key={sitting.id} class="keep">
          <div>
            <p>{sitting.stem}</p>
            <p class="small muted">{strings.worksheet.pencil[sitting.payload.kind]}</p>
            <PencilFields sitting={sitting} />
          </div>
        </li>
      ))}
    </ol>
    <p class="small muted">
      {strings.worksheet.own} {strings.worksheet.again({ seed, count: sittings.length, topics })}
    </p>
  </section>
);

function PencilFields({ sitting: { payload, unit, drawing } }: { readonly sitting: ShownSitting }) {
  switch (payload.kind) {
    case 'choice':
      return <Boxes texts={payload.options.map(({ text }) => text)} />;
    case 'place':
      return (
        <>
          {drawing && <PlaceFigure name={payload.figure.name} drawing={drawing} chosen="" />}
          <Boxes texts={payload.places.map(({ words }) => words)} />
        </>
      );
    case 'order':
      return (
        <>
          <p class="small muted">
            1: {payload.first}; {payload.items.length}: {payload.last}
          </p>
          <Boxes texts={payload.items.map(({ text }) => text)} />
        </>
      );
    case 'typed':
      return (
        <p>
          <span class="printed-line" aria-hidden="true" /> {unit} <span class="muted">{payload.within}</span>
        </p>
      );
  }
}

/** Texts with a box before each, for a cross or a number. */
const Boxes = ({ texts }: { readonly texts: readonly string[] }) => (
  <ul class="printed-boxes">
    {texts.map((text) => (
      <li key={text}>{text}</li>
    ))}
  </ul>
);

/** The answers to a paper, on a sheet of their own. */
export const PrintedAnswers = ({ seed, sittings }: Omit<PrintedProps, 'topics'>) => (
  <section class="printed" aria-labelledby={`answers-${seed}`}>
    <h2 id={`answers-${seed}`}>{strings.worksheet.answers(seed)}</h2>
    <ol class="paper">
      {sittings.map((sitting) => (
        <li key={sitting.id} class="keep">
          <div>
            <WorkedLines sitting={sitting} />
          </div>
        </li>
      ))}
    </ol>
  </section>
);
