import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';
import { manifestName, manifestSchema } from '../../../electron/backend/handover/package/manifest.ts';
import { ask } from '../harness/ask.ts';
import { type BackendChild, Gone } from '../harness/backendChild.ts';
import type { SeedLibrary } from '../harness/seedLibrary.ts';

export const longKinds = ['import', 'measuring', 'handover'] as const;
export type LongKind = (typeof longKinds)[number];

/** Work that goes on after it was acknowledged, and what of it has to be there once the library is at rest. */
export class LongWork {
  readonly #seed: SeedLibrary;
  readonly #out: string;
  #films = 0;
  readonly acknowledged: Record<LongKind, number> = { import: 0, measuring: 0, handover: 0 };
  readonly #maybe: Record<LongKind, number> = { import: 0, measuring: 0, handover: 0 };

  /** @param out the folder that is handed over to */
  constructor(seed: SeedLibrary, out: string) {
    this.#seed = seed;
    this.#out = out;
  }

  /** Asks for it; resolves when that is acknowledged, or the process has ended. */
  async begin(child: BackendChild, kind: LongKind): Promise<void> {
    try {
      await this.#request(child, kind);
      this.acknowledged[kind] += 1;
    } catch (error) {
      if (!(error instanceof Gone)) throw error;
      this.#maybe[kind] += 1;
    }
  }

  #request(child: BackendChild, kind: LongKind): Promise<unknown> {
    const { sessionId, clipId, emptySessionId, emptyEntryId } = this.#seed;
    switch (kind) {
      case 'import':
        return ask(child, 'clips.import', {
          sessionId: emptySessionId,
          entryId: emptyEntryId,
          view: 'side',
          paths: [this.#newFilm()],
        });
      case 'measuring':
        return ask(child, 'measures.start', { clipIds: [clipId], joints: false, again: true });
      case 'handover':
        return ask(child, 'handover.start', {
          sessionIds: [sessionId],
          folder: this.#out,
          options: { clips: false, originals: true, zip: this.acknowledged.handover % 2 === 1 },
        });
    }
  }

  /** The film as another take: the same one comes into a session once only. */
  #newFilm(): string {
    this.#films += 1;
    const take = Buffer.from(`free take ${this.#films}`);
    const box = Buffer.alloc(4);
    box.writeUInt32BE(take.length + 4);
    const file = path.join(path.dirname(this.#out), `take-${this.#films}.mp4`);
    writeFileSync(file, Buffer.concat([readFileSync(this.#seed.film), box, take]));
    return file;
  }

  /** What is missing, or too much, now that no job waits any more; empty when all is well. */
  async check(child: BackendChild): Promise<string[]> {
    const { sessionId, emptySessionId, clipId } = this.#seed;
    const { review, media } = await ask(child, 'review.get', { sessionId: emptySessionId });
    const clips = review.entries.flatMap((entry) => entry.clips).length;
    const { deliveries } = await ask(child, 'handover.list', { sessionId });
    const { measurement } = await ask(child, 'measures.get', { clipId });
    const counted = (kind: LongKind, found: number): string[] => {
      const [least, most] = [this.acknowledged[kind], this.acknowledged[kind] + this.#maybe[kind]];
      return found >= least && found <= most ? [] : [`${kind}: ${found} there, ${least} to ${most} asked for`];
    };
    return [
      ...counted('import', clips),
      ...(media.every(({ ready }) => ready) ? [] : ['import: a clip that can’t be played']),
      ...(measurement === null ? ['measuring: the measures are gone'] : []),
      ...counted('handover', deliveries.length),
      ...this.#foreign(deliveries.map((each) => each.path)),
      ...deliveries.flatMap((each) => brokenHandover(each.path)),
    ];
  }

  #foreign(delivered: readonly string[]): string[] {
    if (!existsSync(this.#out)) return [];
    const known = new Set(delivered.map((each) => path.basename(each)));
    return readdirSync(this.#out)
      .filter((name) => !known.has(name))
      .map((name) => `handover: "${name}" lies there and is not named`);
  }
}

/** What is not whole of a handover that the library names. A zip's ending shows that it is whole. */
export function brokenHandover(place: string): string[] {
  if (!existsSync(place)) return [`handover: "${path.basename(place)}" is named and not there`];
  if (place.endsWith('.zip')) {
    const bytes = readFileSync(place);
    const end = bytes.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'));
    const isWhole = end >= 0 && bytes.readUInt32LE(end + 12) + bytes.readUInt32LE(end + 16) === end;
    return isWhole ? [] : [`handover: "${path.basename(place)}" is no whole zip`];
  }
  const list = path.join(place, manifestName);
  if (!existsSync(list)) return [`handover: no list in "${path.basename(place)}"`];
  const { files } = v.parse(manifestSchema, JSON.parse(readFileSync(list, 'utf8')));
  return files
    .filter(({ name, sha256 }) => {
      const file = path.join(place, ...name.split('/'));
      return !existsSync(file) || createHash('sha256').update(readFileSync(file)).digest('hex') !== sha256;
    })
    .map(({ name }) => `handover: "${name}" is not as listed`);
}
