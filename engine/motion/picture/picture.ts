/** One upright picture in shades of grey, rows from the top: pixel (column, row) is `data[row × width + column]`, 0-255. */
export type GreyPicture = { readonly width: number; readonly height: number; readonly data: Uint8Array };
