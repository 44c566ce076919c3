import { Component, type VNode } from 'preact';

/** Whether two values say the same: numbers and texts, and what is made of them (functions are no matter). */
export function isAlike(one: unknown, other: unknown): boolean {
  if (!(one instanceof Object && other instanceof Object)) return one === other;
  const names = Object.keys(one);
  return (
    names.length === Object.keys(other).length &&
    names.every((name) => name in other && isAlike(one[name as keyof object], other[name as keyof object]))
  );
}

/**
 * A part of a figure that is drawn again only when what it is drawn from says something else. Most of a figure stands still while an end
 * is pulled, and comparing a few numbers costs less than drawing them.
 */
export const still = <Props extends object>(draw: (props: Props) => VNode | null) =>
  class extends Component<Props> {
    override shouldComponentUpdate(next: Props): boolean {
      return !isAlike(this.props, next);
    }
    render(props: Props): VNode | null {
      return draw(props);
    }
  };
