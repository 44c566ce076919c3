/**
 * Calls whenever this page comes back as it was left, from where the browser keeps pages for its back button: of what other pages kept
 * meanwhile it was not told. Ends with the function it answers with.
 */
export function onReturned(call: () => void): () => void {
  const onShow = ({ persisted }: PageTransitionEvent): void => {
    if (persisted) call();
  };
  addEventListener('pageshow', onShow);
  return () => removeEventListener('pageshow', onShow);
}
