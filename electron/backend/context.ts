import type { AnyEvent } from '../contract/events.ts';
import type { LibraryState } from '../contract/requests.ts';
import type { JudgingData } from './catalogue/loadCatalogue.ts';
import type { JobQueue } from './jobs/queue.ts';
import type { MediaTools } from './media/tools.ts';
import type { BackendSettings } from './port.ts';
import type { Library, LibraryFacts } from './store/library.ts';

/** What every handler and job works with. */
export type Context = JudgingData & {
  readonly settings: BackendSettings;
  /** The open library. Throws the problem that keeps it shut, or `library-missing`. */
  readonly library: () => Library;
  readonly libraryState: () => LibraryState;
  readonly createLibrary: (facts: LibraryFacts) => Library;
  /** ffmpeg and ffprobe, looked for once. */
  readonly mediaTools: () => Promise<MediaTools>;
  readonly jobs: JobQueue;
  readonly emit: (event: AnyEvent) => void;
};

/** Tells that a session changed, and with it its line on the desk; after the commit only. */
export function tellChanged(context: Pick<Context, 'emit'>, sessionId: string): void {
  context.emit({ name: 'sessionChanged', data: { sessionId } });
  context.emit({ name: 'deskChanged', data: {} });
}
