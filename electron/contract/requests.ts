import type * as v from 'valibot';
import { aboutRequests, aboutWindowRequests } from './about.ts';
import { arrangingRequests } from './arranging.ts';
import { binRequests } from './bin.ts';
import { cameraRequests } from './cameras.ts';
import { clipRequests, clipWindowRequests } from './clips.ts';
import { comparingRequests } from './comparing.ts';
import { coverRequests } from './covers.ts';
import { deskRequests } from './desk.ts';
import { documentRequests, documentWindowRequests } from './documents.ts';
import { drawingRequests } from './drawings.ts';
import { handoverRequests, handoverWindowRequests } from './handover.ts';
import { inboxRequests, inboxWindowRequests } from './inbox.ts';
import { jobRequests } from './jobs.ts';
import { judgingRequests } from './judging.ts';
import { languageWindowRequests } from './language.ts';
import { letterRequests } from './letters.ts';
import { libraryRequests, libraryWindowRequests } from './library.ts';
import { measuringRequests } from './measuring.ts';
import { nameRequests } from './names.ts';
import { narrationRequests, narrationWindowRequests } from './narrations.ts';
import { nightRequests } from './night.ts';
import { entryRequests, sessionRequests } from './sessions.ts';
import { settingRequests } from './settings.ts';
import { traineeRequests } from './trainees.ts';

/**
 * Every request that a screen, a command or a test can make of the backend: its kind, what it takes, what it gives.
 * Both ends derive their types from this table and check both directions against it.
 */
export const requests = {
  ...aboutRequests,
  ...libraryRequests,
  ...deskRequests,
  ...nightRequests,
  ...traineeRequests,
  ...sessionRequests,
  ...entryRequests,
  ...clipRequests,
  ...inboxRequests,
  ...cameraRequests,
  ...arrangingRequests,
  ...binRequests,
  ...judgingRequests,
  ...drawingRequests,
  ...coverRequests,
  ...measuringRequests,
  ...letterRequests,
  ...documentRequests,
  ...handoverRequests,
  ...comparingRequests,
  ...jobRequests,
  ...settingRequests,
  ...narrationRequests,
  ...nameRequests,
} as const;

type Requests = typeof requests;
export type RequestName = keyof Requests;
export type Params<N extends RequestName> = v.InferInput<Requests[N]['params']>;
export type CheckedParams<N extends RequestName> = v.InferOutput<Requests[N]['params']>;
export type Result<N extends RequestName> = v.InferOutput<Requests[N]['result']>;

type NameOf<K extends Requests[RequestName]['kind']> = {
  [N in RequestName]: Requests[N]['kind'] extends K ? N : never;
}[RequestName];
/** Requests that change nothing. */
export type ReadName = NameOf<'read'>;
/** Requests that change the library or its work. */
export type ActName = NameOf<'act'>;
/** Requests that a screen may make: all but those that are a host's. */
export type ScreenName = ReadName | ActName;

/** Requests that the window's host answers itself: native dialogs and the shell. */
export const windowRequests = {
  ...aboutWindowRequests,
  ...languageWindowRequests,
  ...libraryWindowRequests,
  ...clipWindowRequests,
  ...inboxWindowRequests,
  ...documentWindowRequests,
  ...handoverWindowRequests,
  ...narrationWindowRequests,
} as const;
type WindowRequests = typeof windowRequests;
export type WindowRequestName = keyof WindowRequests;
export type WindowParams<N extends WindowRequestName> = v.InferInput<WindowRequests[N]['params']>;
export type CheckedWindowParams<N extends WindowRequestName> = v.InferOutput<WindowRequests[N]['params']>;
export type WindowResult<N extends WindowRequestName> = v.InferOutput<WindowRequests[N]['result']>;
