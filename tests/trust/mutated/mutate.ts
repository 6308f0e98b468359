import fc from 'fast-check';
import type { Random } from '../harness/random.ts';

/** Values that break what trusts its input, and any JSON besides. */
export function strangeValues(seed: number): readonly unknown[] {
  const chosen = [
    null,
    true,
    -1,
    0,
    1e308,
    -1e-308,
    2 ** 53,
    1.5,
    '',
    ' ',
    'x'.repeat(20_000),
    '../../etc/passwd',
    '/etc/passwd',
  ];
  const words = [
    '\u202e\u0000',
    '\ud800',
    'CON',
    '2026-02-30',
    '9999-99-99',
    '<script>',
    "'; DROP TABLE clip; --",
    '{name}',
    '%s%n',
    'NaN',
  ];
  const nested = [[], {}, Array(2000).fill(0), JSON.parse(`${'['.repeat(60)}${']'.repeat(60)}`)];
  return [...chosen, ...words, ...nested, ...fc.sample(fc.jsonValue({ maxDepth: 3 }), { seed, numRuns: 300 })];
}

type Place = { readonly holder: Record<string, unknown> | unknown[]; readonly key: string | number };

function placesIn(value: unknown): Place[] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, unknown> | unknown[];
  const keys = Array.isArray(holder) ? [...holder.keys()] : Object.keys(holder);
  return keys.flatMap((key) => [{ holder, key }, ...placesIn(Reflect.get(holder, key))]);
}

/** A JSON text that means something else than it did, in one to three places. */
export function mutatedJson(text: string, strange: readonly unknown[], random: Random): string {
  const root: unknown = JSON.parse(text);
  const times = 1 + random.below(3);
  for (let time = 0; time < times; time += 1) {
    const places = placesIn(root);
    if (places.length === 0) break;
    const { holder, key } = random.oneOf(places);
    const value: unknown = Reflect.get(holder, key);
    switch (random.below(6)) {
      case 0:
        if (Array.isArray(holder)) holder.splice(Number(key), 1);
        else Reflect.deleteProperty(holder, key);
        break;
      case 1:
        if (Array.isArray(holder)) holder.push(...Array(1 + random.below(300)).fill(value));
        else
          Object.defineProperty(holder, random.oneOf(['__proto__', 'constructor', 'x'.repeat(200), 'id']), {
            value,
            enumerable: true,
            configurable: true,
            writable: true,
          });
        break;
      case 2:
        if (typeof value === 'number')
          Reflect.set(holder, key, random.oneOf([-value, value + 1, value * 1e6, value / 3, Math.round(value)]));
        else Reflect.set(holder, key, random.oneOf(strange));
        break;
      case 3: {
        // What stands elsewhere stands here too: an id twice, a rep in another's place.
        const other = random.oneOf(places);
        const from: unknown = Reflect.get(other.holder, other.key);
        if (JSON.stringify(from) !== undefined) Reflect.set(holder, key, structuredClone(from));
        break;
      }
      default:
        Reflect.set(holder, key, random.oneOf(strange));
    }
  }
  const written = JSON.stringify(root);
  return random.below(5) === 0 ? mutatedBytes(Buffer.from(written), random).toString('latin1') : written;
}

/** Bytes with some changed, cut out, doubled, or cut off. */
export function mutatedBytes(bytes: Buffer, random: Random, within = bytes.length): Buffer {
  const at = random.below(Math.max(1, within));
  switch (random.below(5)) {
    case 0:
      return bytes.subarray(0, at);
    case 1:
      return Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + 1 + random.below(200))]);
    case 2:
      return Buffer.concat([bytes.subarray(0, at), bytes.subarray(Math.max(0, at - 100))]);
    default: {
      const changed = Buffer.from(bytes);
      const times = 1 + random.below(8);
      for (let time = 0; time < times && changed.length > 0; time += 1) {
        changed.writeUInt8(
          random.oneOf([0, 255, 127, 128, random.below(256)]),
          random.below(Math.min(within, changed.length)),
        );
      }
      return changed;
    }
  }
}

const extremes = [0, 1, 7, 0x7fffffff, 0xffffffff, 0xfffffff0] as const;

/** A zip with a field of its structure set to something else, or with bytes changed anywhere. */
export function mutatedZip(bytes: Buffer, random: Random): Buffer {
  if (random.below(3) === 0) return mutatedBytes(bytes, random);
  const changed = Buffer.from(bytes);
  const [signature, length] = random.oneOf([
    ['PK\x01\x02', 46],
    ['PK\x03\x04', 30],
    ['PK\x05\x06', 22],
  ] as const);
  const starts: number[] = [];
  for (let at = changed.indexOf(signature, 0, 'latin1'); at >= 0; at = changed.indexOf(signature, at + 4, 'latin1'))
    starts.push(at);
  if (starts.length === 0) return changed;
  const start = random.oneOf(starts);
  if (signature !== 'PK\x05\x06' && random.below(3) === 0) {
    // Its name, of the same length.
    const nameAt = start + length;
    changed.write(random.oneOf(['../../../x', '/etc/passwd', 'C:\\x', '..\\..\\x', 'manifest.json']), nameAt, 'latin1');
    return changed;
  }
  const field = start + 4 + 2 * random.below((length - 6) / 2);
  if (field + 4 <= changed.length) changed.writeUInt32LE(random.oneOf(extremes), field);
  return changed;
}

type Box = { readonly at: number; readonly size: number; readonly type: string };

const holders = new Set(['moov', 'trak', 'mdia', 'minf', 'stbl', 'edts', 'udta', 'dinf']);

function boxesIn(bytes: Buffer, from: number, to: number): Box[] {
  const boxes: Box[] = [];
  for (let at = from; at + 8 <= to; ) {
    const size = bytes.readUInt32BE(at);
    const type = bytes.toString('latin1', at + 4, at + 8);
    if (size < 8 || at + size > to) break;
    boxes.push({ at, size, type });
    if (holders.has(type)) boxes.push(...boxesIn(bytes, at + 8, at + size));
    at += size;
  }
  return boxes;
}

/** A film whose boxes are not what they say (mp4, mov), or whose first elements are not (mkv, webm, ts). */
export function mutatedFilm(bytes: Buffer, random: Random): Buffer {
  const boxes = boxesIn(bytes, 0, bytes.length).filter(({ type }) => type !== 'mdat');
  if (boxes.length === 0) return mutatedBytes(bytes, random, random.below(3) === 0 ? bytes.length : 2000);
  if (random.below(8) === 0) return mutatedBytes(bytes, random);
  const { at, size } = random.oneOf(boxes);
  const changed = Buffer.from(bytes);
  switch (random.below(5)) {
    case 0:
      changed.writeUInt32BE(random.oneOf([...extremes, size + 1, size - 1, size * 2]) >>> 0, at);
      return changed;
    case 1:
      changed.write(random.oneOf(['free', 'moov', 'stts', 'mdat', 'uuid', '\0\0\0\0']), at + 4, 'latin1');
      return changed;
    case 2:
      return Buffer.concat([bytes.subarray(0, at + size), bytes.subarray(at, at + size), bytes.subarray(at + size)]);
    case 3:
      return Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + size)]);
    default: {
      const inside = at + 8 + random.below(Math.max(1, Math.min(80, size - 8)));
      if (inside + 4 <= changed.length)
        changed.writeUInt32BE(random.oneOf([...extremes, random.below(2 ** 32)]), inside);
      return changed;
    }
  }
}
