import type { Context } from './context.ts';

/** Tells that a session changed, and with it its line on the desk; after the commit only. */
export function tellChanged(context: Pick<Context, 'emit'>, sessionId: string): void {
  context.emit({ name: 'sessionChanged', data: { sessionId } });
  context.emit({ name: 'deskChanged', data: {} });
}
