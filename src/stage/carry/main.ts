declare global {
  /** Address of this very script, set by the loader: from it a carried page starts its workers, having no other file. */
  var carriedScript: string;
}

/** Does the work of the worker whose name this one was started under. */
async function work(name: string): Promise<void> {
  if (name === 'tries.worker.ts') await import('../../widgets/tries/tries.worker.ts');
  if (name === 'simulation.worker.ts') await import('../../widgets/simulation/simulation.worker.ts');
}

/** Nothing of the page may run in a worker, which has no document: so it is not even read there. */
async function wakePage(): Promise<void> {
  const { wake } = await import('./wake.ts');
  wake();
}

if (typeof document === 'undefined') void work((globalThis as unknown as { readonly name: string }).name);
else void wakePage();

// What is declared for everybody asks for a module.
export {};
