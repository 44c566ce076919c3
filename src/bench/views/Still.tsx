import { Component, type ComponentChildren } from 'preact';

interface StillProps {
  /** Whether a held handle is moving. */
  readonly moves: boolean;
  readonly children: ComponentChildren;
}

/** What waits while a held handle moves, and is drawn when that rests or is let go. What is in it may still change by itself. */
export class Still extends Component<StillProps> {
  override shouldComponentUpdate({ moves }: StillProps): boolean {
    return !moves;
  }
  render({ children }: StillProps) {
    return children;
  }
}
