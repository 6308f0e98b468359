import type { Constant, OnnxGraph } from './onnxGraph.ts';
import type { SourceNode } from './sourceModel.ts';

/**
 * A converted value. Convolutions of ONNX take channels before rows and columns; TensorFlow keeps them last. Values stay as
 * they come and are turned where an operation needs it.
 */
export type Value = { readonly name: string; readonly channels: 'first' | 'last' };

export type PictureSize = { readonly height: number; readonly width: number };

/** What is known while a network is converted: the new graph, and what the source's values are in it. */
export type Conversion = {
  readonly graph: OnnxGraph;
  /** A value that is known beforehand; null when it depends on the picture. */
  readonly constant: (input: string) => Constant | null;
  readonly value: (input: string) => Value;
  /** The value's name with its channels last, or first; the turning is added once. */
  readonly channelsLast: (input: string) => string;
  readonly channelsFirst: (input: string) => string;
  /** Says what a node gives; `result` tells the results of a node apart. */
  readonly give: (node: SourceNode, name: string, channels?: Value['channels'], result?: number) => void;
  /** Rows and columns of a value that is a picture. Throws when they are not known. */
  readonly sizeOf: (input: string) => PictureSize;
  readonly giveSize: (node: SourceNode, size: PictureSize) => void;
  /** A node that changes no place in the picture: it has the size of its first input whose size is known. */
  readonly keepSize: (node: SourceNode) => void;
};

/** What an operation of the source becomes in the new graph. */
export type Operation = (conversion: Conversion, node: SourceNode, inputs: readonly string[]) => void;
export type Operations = Readonly<Record<string, Operation>>;

/** Starts a conversion in which the given constants are known. */
export function openConversion(graph: OnnxGraph, constants: ReadonlyMap<string, Constant>): Conversion {
  const values = new Map<string, Value>();
  const turned = new Map<string, string>();
  const sizes = new Map<string, PictureSize>();
  const keyOf = (input: string) => input.replace(/:0$/, '');
  const constant = (input: string) => constants.get(input) ?? constants.get(keyOf(input)) ?? null;

  const value = (input: string): Value => {
    const key = keyOf(input);
    const known = values.get(key);
    if (known) return known;
    const found = constant(input);
    if (found === null) throw new Error(`nothing gives ${input}`);
    const added: Value = { name: graph.constant(found), channels: 'last' };
    values.set(key, added);
    return added;
  };
  const withChannels = (input: string, channels: Value['channels'], order: readonly number[]): string => {
    const { name, channels: present } = value(input);
    if (present === channels) return name;
    const already = turned.get(name);
    if (already !== undefined) return already;
    const added = graph.add('Transpose', [name], { perm: order });
    turned.set(name, added);
    return added;
  };

  return {
    graph,
    constant,
    value,
    channelsLast: (input) => withChannels(input, 'last', [0, 2, 3, 1]),
    channelsFirst: (input) => withChannels(input, 'first', [0, 3, 1, 2]),
    give: (node, name, channels = 'last', result = 0) => {
      values.set(result === 0 ? node.name : `${node.name}:${result}`, { name, channels });
    },
    sizeOf: (input) => {
      const size = sizes.get(keyOf(input));
      if (!size) throw new Error(`${input} is no picture`);
      return size;
    },
    giveSize: (node, size) => {
      sizes.set(node.name, size);
    },
    keepSize: (node) => {
      const size = node.input.map((input) => sizes.get(keyOf(input))).find((known) => known !== undefined);
      if (size) sizes.set(node.name, size);
    },
  };
}

/** The numbers of an input that must be known beforehand. */
export function numbersIn({ constant }: Conversion, input: string | undefined): readonly number[] {
  const found = input === undefined ? null : constant(input);
  if (found === null) throw new Error(`${input} should be known beforehand`);
  return [...found.data];
}

/** The only number of an input that must be known beforehand. */
export function numberIn(conversion: Conversion, input: string | undefined): number {
  const [number, ...more] = numbersIn(conversion, input);
  if (number === undefined || more.length > 0) throw new Error(`${input} should be one number`);
  return number;
}

/** An input that an operation can't do without. */
export function inputAt(inputs: readonly string[], index: number): string {
  const input = inputs[index];
  if (input === undefined) throw new Error(`input ${index} is missing`);
  return input;
}
