import * as v from 'valibot';
import type { RacksideDocument } from '../../../engine/document/document.ts';
import { ProblemError } from '../../contract/reply.ts';

const words = v.string();
const inline = v.variant('kind', [
  v.strictObject({ kind: v.picklist(['text', 'strong', 'emphasis']), text: words }),
  v.strictObject({ kind: v.literal('time'), clip: words, us: v.number(), text: words }),
]);
const line = v.array(inline);
const align = v.picklist(['start', 'end']);

const block = v.variant('kind', [
  v.strictObject({ kind: v.literal('heading'), level: v.picklist([2, 3]), id: words, text: words }),
  v.strictObject({ kind: v.literal('paragraph'), id: words, inlines: line }),
  v.strictObject({ kind: v.literal('list'), id: words, ordered: v.boolean(), items: v.array(line) }),
  v.strictObject({
    kind: v.literal('table'),
    id: words,
    caption: words,
    columns: v.array(v.strictObject({ label: words, align })),
    rows: v.array(v.array(line)),
    bars: v.exactOptional(v.strictObject({ column: v.number(), shares: v.array(v.nullable(v.number())) })),
  }),
  v.strictObject({
    kind: v.literal('picture'),
    id: words,
    source: words,
    size: v.exactOptional(v.strictObject({ widthPx: v.number(), heightPx: v.number() })),
    alt: words,
    caption: words,
    beside: v.exactOptional(v.array(words)),
  }),
  v.strictObject({ kind: v.literal('notice'), id: words, title: words, paragraphs: v.array(line) }),
]);

const documentSchema = v.strictObject({
  title: words,
  language: words,
  author: words,
  date: words,
  fits: v.exactOptional(v.literal('onePage')),
  blocks: v.array(block),
});

/** A document that was kept as JSON. Throws `internal` when it is not one. */
export function parseDocument(json: string): RacksideDocument {
  const parsed = v.safeParse(documentSchema, JSON.parse(json));
  if (parsed.success) return parsed.output;
  throw new ProblemError(
    'internal',
    'A letter kept in the library can no longer be read; nothing was changed; restore a backup to see it.',
  );
}
