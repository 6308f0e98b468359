/** Runs a network on a square picture of red, green and blue (0-255, three numbers a pixel). */
export type Network = (rgb: Int32Array, side: number) => Promise<Float32Array>;

/**
 * `one`: joints of the person in the middle, finely; 17 × (y, x, score) as shares of the side; takes a side of 256.
 * `several`: up to six people, roughly; 6 × 56 numbers: 17 × (y, x, score), then top, left, bottom, right, score; takes
 * a side of 320.
 */
export type Networks = { readonly one: Network; readonly several: Network };

export type NetworkName = keyof Networks;

/** MoveNet "Thunder" for one person, MoveNet for several: their names in the package, and the side of the pictures they take. */
export const sources = {
  one: { model: 'movenet-thunder', side: 256 },
  several: { model: 'movenet-multipose', side: 320 },
} as const satisfies Readonly<Record<NetworkName, { readonly model: string; readonly side: number }>>;
