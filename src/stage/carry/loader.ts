/** Id of the compressed script in a carried file. */
export const PACKED = 'carried-script';

/**
 * The one script that runs by itself in a carried file: it unpacks the other, and lets it run from an address of its own, from which
 * workers can be started as well.
 */
export const LOADER = `(async () => {
  const packed = atob(document.getElementById('${PACKED}').textContent);
  const bytes = Uint8Array.from(packed, (letter) => letter.charCodeAt(0));
  const plain = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  const script = new Blob([await new Response(plain).blob()], { type: 'text/javascript' });
  globalThis.carriedScript = URL.createObjectURL(script);
  const tag = document.createElement('script');
  tag.src = globalThis.carriedScript;
  document.body.append(tag);
})();`;
