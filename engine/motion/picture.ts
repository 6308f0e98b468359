/** One upright picture in shades of grey, rows from the top: pixel (column, row) is `data[row × width + column]`, 0-255. */
export type GreyPicture = { readonly width: number; readonly height: number; readonly data: Uint8Array };

/**
 * One upright picture in colour, planes apart as video stores them: `grey` in full size, the two colour differences at
 * half the width and half the height (rounded up), centred on 128.
 */
export type ColourPicture = {
  readonly grey: GreyPicture;
  readonly blueDifference: Uint8Array;
  readonly redDifference: Uint8Array;
};
