/** The last part of a path, of either kind of system. */
export const fileName = (path: string): string => path.split(/[\\/]/).at(-1) ?? path;
