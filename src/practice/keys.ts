/** Controls that do something of their own with a key. */
const OWN = 'a, button, summary, select, textarea, input[type="text"], input[type="number"]';

/**
 * Keys of a form with a question, while the focus is inside it: a digit chooses, Enter hands in. What a control does with them by
 * itself is left to it.
 */
export function answerKey(event: KeyboardEvent): void {
  const { target, currentTarget, key } = event;
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  if (!(target instanceof HTMLElement && currentTarget instanceof HTMLFormElement)) return;
  if (key === 'Enter' && !target.matches(`${OWN}, input`)) {
    event.preventDefault();
    currentTarget.requestSubmit();
    return;
  }
  if (!/^[1-9]$/.test(key) || target.matches('input[type="text"], textarea, input[type="number"]')) return;
  const radio = [...currentTarget.querySelectorAll<HTMLInputElement>('input[type="radio"]:enabled')][
    Number(key) - 1
  ];
  if (radio === undefined) return;
  event.preventDefault();
  radio.focus();
  radio.click();
}
