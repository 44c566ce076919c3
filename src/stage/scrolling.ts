/**
 * Lets the keyboard into a step that is taller or wider than its window, so that its end can be scrolled to; a step that fits is no stop. Not
 * every browser does so by itself. What a step holds may grow: an answer is opened, or a window made narrower.
 */
export function openScrolling(slides: readonly HTMLElement[]): void {
  const judge = (slide: Element): void => {
    const { scrollHeight, scrollWidth, clientHeight, clientWidth } = slide;
    if (scrollHeight > clientHeight + 1 || scrollWidth > clientWidth + 1) slide.setAttribute('tabindex', '0');
    else slide.removeAttribute('tabindex');
  };
  const sizes = new ResizeObserver((entries) => {
    for (const { target } of entries) judge(target.closest('.slide') ?? target);
  });
  for (const slide of slides) for (const part of [slide, ...slide.children]) sizes.observe(part);
}
