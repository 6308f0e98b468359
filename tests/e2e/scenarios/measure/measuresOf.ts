import type { Result } from '../../../../electron/contract/requests.ts';
import type { App } from '../../harness/app.ts';

/** What the backend says of a clip's measures now. */
export const measuresOf = (app: App, clipId: string): Promise<Result<'measures.get'>> =>
  app.ask('measures.get', { clipId });
