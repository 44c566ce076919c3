import type { PracticeProps } from './facts.ts';
import { AroundContext } from './views/context.ts';
import { Home } from './views/Home.tsx';
import { OneQuestion } from './views/OneQuestion.tsx';
import { Paper } from './views/Paper.tsx';
import { TopicRound } from './views/TopicRound.tsx';
import { Worksheet } from './views/Worksheet.tsx';

/** The island of every page of practice. */
export default function Practice(props: PracticeProps) {
  return (
    <AroundContext.Provider value={props}>
      <PracticePart {...props} />
    </AroundContext.Provider>
  );
}

function PracticePart(props: PracticeProps) {
  switch (props.page) {
    case 'home':
      return <Home />;
    case 'topic':
      return <TopicRound topic={props.topic} />;
    case 'revision':
      return <TopicRound topic={undefined} />;
    case 'paper':
      return <Paper />;
    case 'question':
      return <OneQuestion sitting={props.sitting} />;
    case 'worksheet':
      return <Worksheet sittings={props.sittings} />;
  }
}
