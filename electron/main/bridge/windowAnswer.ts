import type { Reply } from '../../contract/reply.ts';
import type { CheckedWindowParams, WindowRequestName, WindowResult } from '../../contract/requests.ts';

/** How one question of the page to the window's host is answered. */
export type WindowAnswer<N extends WindowRequestName> = (
  params: CheckedWindowParams<N>,
) => Promise<Reply<WindowResult<N>>>;
