/** The module that Node loads; the published types describe it under the package's own name. */
declare module 'bidi-js/dist/bidi.mjs' {
  import type { Bidi } from 'bidi-js';

  // biome-ignore lint/style/noDefaultExport: it is what the module has.
  export default function bidiFactory(): Bidi;
}
