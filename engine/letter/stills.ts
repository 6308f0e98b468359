/** A picture of a remark's moment: a file beside the letter by its relative name, or the picture as a data URL. */
export type Still = { readonly source: string; readonly widthPx: number; readonly heightPx: number };

/** Stills by the ids of the flags they show. */
export type Stills = ReadonlyMap<string, Still>;
