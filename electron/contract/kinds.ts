import type * as v from 'valibot';

/** What a request takes and gives: a schema for each direction. */
type Shape<P extends v.GenericSchema, R extends v.GenericSchema> = { readonly params: P; readonly result: R };

/** A request that changes nothing. */
export const read = <P extends v.GenericSchema, R extends v.GenericSchema>(shape: Shape<P, R>) => ({
  kind: 'read' as const,
  ...shape,
});

/** A request that changes the library or its work. Its reply holds only what the caller can't know: a new id, mostly. */
export const act = <P extends v.GenericSchema, R extends v.GenericSchema>(shape: Shape<P, R>) => ({
  kind: 'act' as const,
  ...shape,
});

/** A request that names paths on the disk: only a host (main process, command, test) may make it, never a screen. */
export const host = <P extends v.GenericSchema, R extends v.GenericSchema>(shape: Shape<P, R>) => ({
  kind: 'host' as const,
  ...shape,
});
