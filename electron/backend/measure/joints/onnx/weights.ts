import type { Constant } from './onnxGraph.ts';
import type { SourceModel, Weight } from './sourceModel.ts';

/** The weights of a network by their names, those kept as half-precision numbers widened. Throws for other ways of keeping them. */
export function weightsOf({ weights, weightBytes }: SourceModel): Map<string, Constant> {
  const found = new Map<string, Constant>();
  let start = 0;
  for (const weight of weights) {
    const count = weight.shape.reduce((product, size) => product * size, 1);
    const length = count * bytesEach(weight);
    const bytes = weightBytes.slice(start, start + length);
    if (bytes.length < length) throw new Error(`the weights end before ${weight.name}`);
    found.set(weight.name, { shape: weight.shape, data: numbersOf(weight, bytes) });
    start += length;
  }
  return found;
}

function bytesEach({ dtype, quantization }: Weight): number {
  if (quantization?.dtype === 'float16') return 2;
  if (quantization) throw new Error(`weights kept as ${quantization.dtype} are not known`);
  return dtype === 'bool' ? 1 : 4;
}

function numbersOf({ dtype, quantization }: Weight, bytes: Uint8Array<ArrayBuffer>): Constant['data'] {
  if (quantization) return Float32Array.from(new Uint16Array(bytes.buffer), singleOfHalf);
  if (dtype === 'float32') return new Float32Array(bytes.buffer);
  return dtype === 'int32' ? new Int32Array(bytes.buffer) : bytes;
}

/** The number that 16 bits stand for (IEEE 754, binary16). */
function singleOfHalf(bits: number): number {
  const sign = bits & 0x8000 ? -1 : 1;
  const exponent = (bits >> 10) & 31;
  const fraction = bits & 1023;
  if (exponent === 0) return sign * 2 ** -24 * fraction;
  if (exponent === 31) return fraction === 0 ? sign * Number.POSITIVE_INFINITY : Number.NaN;
  return sign * 2 ** (exponent - 15) * (1 + fraction / 1024);
}
