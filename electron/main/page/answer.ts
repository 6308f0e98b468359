import * as v from 'valibot';
import type { Backend } from '../../contract/backend.ts';
import { type DocumentKind, documentKindSchema } from '../../contract/documents.ts';
import type { Reply } from '../../contract/reply.ts';
import { type Scheme, schemeSchema } from '../../contract/shapes.ts';
import { commonHeaders, documentPolicy, pagePolicy } from './contentPolicy.ts';
import { answerWithFile } from './mediaAnswer.ts';
import { isOwnAddress } from './ownAddress.ts';
import { readStaticFile } from './staticFile.ts';

/** Where the answers to the page come from. */
export type PageSource = {
  /** Folder the page was built into. */
  readonly folder: string;
  readonly ask: Backend['ask'];
};

/**
 * Answers every request of the page: its own files, clips and pictures by id, documents for the preview. A path on disk
 * never appears in an address.
 */
export async function answer(request: Request, source: PageSource): Promise<Response> {
  if (!isOwnAddress(request.url)) return refusal(404);
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return refusal(405, { Allow: 'GET, HEAD' });
  }
  const { pathname, searchParams } = new URL(request.url);
  const asked = v.safeParse(schemeSchema, searchParams.get('scheme'));
  const look: Look = asked.success ? { scheme: asked.output } : {};
  const [, kind = '', id = '', what = '', ...rest] = pathname.split('/');
  if (rest.length === 0) {
    if (kind === 'media' && id !== '' && what === '') return media(request, source, id, 'clip');
    if (kind === 'voice' && id !== '' && what === '') return media(request, source, id, 'voice');
    if (kind === 'inbox' && (what === 'poster' || what === 'filmstrip')) {
      return asFile(request, await source.ask('inbox.picture', { arrivalId: decode(id), what }));
    }
    if (kind === 'pictures' && (what === 'poster' || what === 'filmstrip')) return media(request, source, id, what);
    if (kind === 'preview' && isDocument(what))
      return preview(request, source, { sessionId: decode(id), document: what, ...look });
    const sent = kind === 'preview' ? sentVersion.exec(what)?.[1] : undefined;
    if (sent !== undefined) {
      return sentLetter(request, source, { sessionId: decode(id), version: Number(sent), ...look });
    }
  }
  return page(request, source, pathname);
}

const isDocument = (what: string): what is DocumentKind => v.is(documentKindSchema, what);

async function media(
  request: Request,
  source: PageSource,
  clipId: string,
  what: 'clip' | 'poster' | 'filmstrip' | 'voice',
): Promise<Response> {
  return asFile(request, await source.ask('media.resolve', { clipId: decode(clipId), what }));
}

async function asFile(
  request: Request,
  reply: Reply<{ readonly path: string; readonly type: string }>,
): Promise<Response> {
  return reply.ok ? answerWithFile(request, reply.value) : refusal(reply.problem.code === 'backend-gone' ? 503 : 404);
}

const sentVersion = /^sent-([1-9]\d{0,5})$/;

/** The scheme that the desk is in by choice; without one the device's. */
type Look = { readonly scheme?: Scheme };

async function sentLetter(
  request: Request,
  source: PageSource,
  asked: Look & { readonly sessionId: string; readonly version: number },
): Promise<Response> {
  return shown(request, await source.ask('letters.sent', asked));
}

async function preview(
  request: Request,
  source: PageSource,
  asked: Look & { readonly sessionId: string; readonly document: DocumentKind },
): Promise<Response> {
  return shown(request, await source.ask('documents.preview', asked));
}

function shown(request: Request, reply: Reply<{ readonly html: string }>): Response {
  if (!reply.ok) return refusal(404);
  const headers = { 'Content-Type': 'text/html; charset=utf-8', 'Content-Security-Policy': documentPolicy };
  return whole(request, Buffer.from(reply.value.html), headers);
}

async function page(request: Request, source: PageSource, pathname: string): Promise<Response> {
  const file = await readStaticFile(source.folder, pathname);
  if (file === null) return refusal(404);
  return whole(request, file.content, { 'Content-Type': file.type, 'Content-Security-Policy': pagePolicy });
}

function whole(request: Request, content: Buffer<ArrayBuffer>, headers: Readonly<Record<string, string>>): Response {
  return new Response(request.method === 'HEAD' ? null : content, {
    headers: { ...commonHeaders, ...headers, 'Content-Length': String(content.length) },
  });
}

function refusal(status: 404 | 405 | 503, headers: Readonly<Record<string, string>> = {}): Response {
  return new Response(null, { status, headers: { ...commonHeaders, ...headers } });
}

/** The id inside an address; one that can't be read stays as it is and names nothing. */
function decode(id: string): string {
  try {
    return decodeURIComponent(id);
  } catch {
    return id;
  }
}
