import { createHash } from 'node:crypto';
import { readdir, readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import { cacheFolder } from '../../files/cacheFolder.ts';
import { makeFolder } from '../../files/makeFolder.ts';
import { writeWhole } from '../../files/writeWhole.ts';
import { converterVersion, convertModel } from './onnx/convertModel.ts';
import { readSourceModel, type SourceModel } from './onnx/sourceModel.ts';
import { shapesOf } from './shapesOf.ts';

const hashBytes = 32;

/**
 * A network as an ONNX file's bytes. It is converted once and kept in the cache folder, under a name that tells what it was
 * converted from; a file that is damaged is made again. Where the folder can't be written to, it is converted each time.
 *
 * @param folder where converted networks are kept
 * @throws Error when the network is missing or can't be converted
 */
export async function convertedModel(
  name: string,
  side: number,
  folder: string = path.join(cacheFolder(), 'networks'),
): Promise<Uint8Array<ArrayBuffer>> {
  const source = readSourceModel(name);
  const file = path.join(folder, `${name}-${fingerprint(source, side)}.onnx`);
  const kept = await readKept(file);
  if (kept !== null) return kept;
  const model = convertModel(source, side, await shapesOf(source, side));
  await keep(file, model, name).catch(ignore);
  return model;
}

const ignore = () => undefined;

/** Changes with the network's files, with the side, and with the converter. */
function fingerprint({ topology, weightBytes }: SourceModel, side: number): string {
  const hash = createHash('sha256').update(`${converterVersion} ${side}\n`).update(JSON.stringify(topology));
  return hash.update(weightBytes).digest('hex').slice(0, 16);
}

const hashOf = (bytes: Uint8Array): Buffer => createHash('sha256').update(bytes).digest();

/** A kept model; null when there is none, or none whose content is as it was written. */
async function readKept(file: string): Promise<Uint8Array<ArrayBuffer> | null> {
  const bytes = await readFile(file).catch(() => null);
  if (bytes === null) return null;
  const model = Uint8Array.from(bytes.subarray(hashBytes));
  return hashOf(model).equals(bytes.subarray(0, hashBytes)) ? model : null;
}

/** Keeps a model after its hash, and takes away what the same network was converted to before. */
async function keep(file: string, model: Uint8Array, name: string): Promise<void> {
  const folder = path.dirname(file);
  makeFolder(folder);
  await writeWhole(file, Buffer.concat([hashOf(model), model]));
  for (const other of await readdir(folder)) {
    if (other.startsWith(`${name}-`) && other !== path.basename(file))
      await rm(path.join(folder, other), { force: true });
  }
}
