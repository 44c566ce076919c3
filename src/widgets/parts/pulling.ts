/** What a figure tells while one of its handles is held. */
type Hold = { readonly type: 'grasp' | 'release' | 'cancel' };

/** Props of a figure by which taking a handle, letting go of it and giving up come to a reducer. */
export const pulling = (send: (hold: Hold) => void) => ({
  onGrasp: () => send({ type: 'grasp' }),
  onRelease: () => send({ type: 'release' }),
  onCancel: () => send({ type: 'cancel' }),
});
