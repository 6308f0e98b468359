import { bytesField, joined, wholeField } from './protobuf.ts';

/** Numbers of ONNX's element types (onnx.proto, TensorProto.DataType). */
export const elementType = { float32: 1, int32: 6, int64: 7, bool: 9 } as const;
export type ElementType = keyof typeof elementType;

/** An array of numbers with its shape; `Uint8Array` holds truth values. */
export type Constant = {
  readonly shape: readonly number[];
  readonly data: Float32Array | Int32Array | Uint8Array;
};

/** A setting of an operation: a whole number, several, or a word. */
export type Setting = number | readonly number[] | string;
export type Settings = Readonly<Record<string, Setting>>;

/** An ONNX model under construction. Values are known by names that it gives. */
export type OnnxGraph = {
  readonly constant: (constant: Constant) => string;
  /** A list of 64-bit whole numbers, as shapes, axes and places are given. */
  readonly places: (values: readonly number[]) => string;
  /** A single float32. */
  readonly scalar: (value: number) => string;
  /** Adds an operation with one result. An empty input name leaves that input out. */
  readonly add: (operation: string, inputs: readonly string[], settings?: Settings) => string;
  /** Adds an operation with so many results. */
  readonly addSeveral: (count: number, operation: string, inputs: readonly string[], settings: Settings) => string[];
  /** The whole model, in ONNX's file format. */
  readonly bytes: (input: GraphInput, output: string) => Uint8Array<ArrayBuffer>;
};

export type GraphInput = { readonly name: string; readonly type: ElementType; readonly shape: readonly number[] };

/** Version of the file format, and of the set of operations that is used. */
const fileVersion = 8;
const operationsVersion = 17;

/** Starts an empty graph. Field numbers are those of onnx.proto. */
export function openOnnxGraph(): OnnxGraph {
  const nodes: Uint8Array[] = [];
  const constants: Uint8Array[] = [];
  let names = 0;
  const newName = () => {
    names += 1;
    return `v${names}`;
  };
  const keep = (type: ElementType, shape: readonly number[], data: ArrayBufferView): string => {
    const name = newName();
    const raw = new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
    const dimensions = shape.map((size) => wholeField(1, size));
    constants.push(
      bytesField(5, [...dimensions, wholeField(2, elementType[type]), bytesField(8, name), bytesField(9, raw)]),
    );
    return name;
  };
  const addSeveral: OnnxGraph['addSeveral'] = (count, operation, inputs, settings) => {
    const outputs = Array.from({ length: count }, newName);
    nodes.push(nodeField(operation, inputs, outputs, settings));
    return outputs;
  };
  return {
    constant: ({ shape, data }) => keep(typeOf(data), shape, data),
    places: (values) => keep('int64', [values.length], BigInt64Array.from(values, BigInt)),
    scalar: (value) => keep('float32', [], Float32Array.of(value)),
    add: (operation, inputs, settings = {}) => {
      const [output] = addSeveral(1, operation, inputs, settings);
      if (output === undefined) throw new Error(`${operation} gives nothing`);
      return output;
    },
    addSeveral,
    bytes: (input, output) => {
      nodes.push(nodeField('Identity', [output], ['output'], {}));
      const graph = [...nodes, bytesField(2, 'joints'), ...constants, inputField(input), outputField];
      const operations = [bytesField(1, ''), wholeField(2, operationsVersion)];
      return joined([wholeField(1, fileVersion), bytesField(7, graph), bytesField(8, operations)]);
    },
  };
}

function typeOf(data: Constant['data']): ElementType {
  if (data instanceof Float32Array) return 'float32';
  return data instanceof Int32Array ? 'int32' : 'bool';
}

function nodeField(
  operation: string,
  inputs: readonly string[],
  outputs: readonly string[],
  settings: Settings,
): Uint8Array {
  return bytesField(1, [
    ...inputs.map((name) => bytesField(1, name)),
    ...outputs.map((name) => bytesField(2, name)),
    bytesField(4, operation),
    ...Object.entries(settings).map(([name, setting]) =>
      bytesField(5, [bytesField(1, name), ...settingFields(setting)]),
    ),
  ]);
}

function settingFields(setting: Setting): readonly Uint8Array[] {
  if (typeof setting === 'number') return [wholeField(3, setting), wholeField(20, 2)];
  if (typeof setting === 'string') return [bytesField(4, setting), wholeField(20, 3)];
  return [...setting.map((value) => wholeField(8, value)), wholeField(20, 7)];
}

function inputField({ name, type, shape }: GraphInput): Uint8Array {
  const dimensions = shape.map((size) => bytesField(1, wholeField(1, size)));
  return bytesField(11, [
    bytesField(1, name),
    bytesField(2, bytesField(1, [wholeField(1, elementType[type]), bytesField(2, dimensions)])),
  ]);
}

const outputField = bytesField(12, [
  bytesField(1, 'output'),
  bytesField(2, bytesField(1, wholeField(1, elementType.float32))),
]);
