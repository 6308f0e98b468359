/**
 * The wire format of Protocol Buffers (Google, "Encoding", 2008), as much of it as an ONNX file needs. Each function gives one field: its tag, then
 * its content.
 */

function varint(value: number | bigint): Uint8Array {
  const bytes: number[] = [];
  let rest = BigInt.asUintN(64, BigInt(value));
  do {
    const low = Number(rest & 127n);
    rest >>= 7n;
    bytes.push(rest > 0n ? low | 128 : low);
  } while (rest > 0n);
  return Uint8Array.from(bytes);
}

const tag = (field: number, wireType: 0 | 2 | 5) => varint((field << 3) | wireType);

/** Byte arrays one after the other. */
export const joined = (parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> => Uint8Array.from(Buffer.concat(parts));

/** A whole number, negative ones as 64 bits. */
export const wholeField = (field: number, value: number): Uint8Array => joined([tag(field, 0), varint(value)]);

/** A text, or a message whose fields are given one after the other. */
export function bytesField(field: number, content: Uint8Array | string | readonly Uint8Array[]): Uint8Array {
  const bytes =
    typeof content === 'string' ? Buffer.from(content) : content instanceof Uint8Array ? content : joined(content);
  return joined([tag(field, 2), varint(bytes.length), bytes]);
}
