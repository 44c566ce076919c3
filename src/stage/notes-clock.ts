import { clockText, spanText } from './clock-text.ts';

/** Shows the time of day and how long the talk has gone on, beside the notes; counted from when the notes were opened, or anew. */
export function startClock(): void {
  const clock = document.querySelector('[data-deck="clock"]');
  const span = document.querySelector('[data-deck="span"]');
  let began = Date.now();
  const draw = (): void => {
    const now = new Date();
    if (clock) clock.textContent = clockText(now.getHours(), now.getMinutes());
    if (span) span.textContent = spanText(now.getTime() - began);
  };
  document.querySelector('[data-deck="anew"]')?.addEventListener('click', () => {
    began = Date.now();
    draw();
  });
  draw();
  setInterval(draw, 1000);
}
