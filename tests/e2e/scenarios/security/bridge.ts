import assert from 'node:assert/strict';
import type { App } from '../../harness/app.ts';
import type { Report } from '../../harness/report.ts';

const wrongQuestions: readonly (readonly [what: string, name: unknown, params: unknown])[] = [
  ['an unknown name', 'library.burn', {}],
  ['a name of the prototype', '__proto__', {}],
  ['a name that is no text', 7, {}],
  ['a question only the host may ask', 'media.resolve', { clipId: 'c', what: 'clip' }],
  [
    'a write to a path of its own choice',
    'documents.write',
    { sessionId: 's', document: 'letter', format: 'md', path: '/tmp/x' },
  ],
  ['a surplus parameter', 'library.state', { further: 1 }],
  ['an id with a path in it', 'review.get', { sessionId: '../../etc' }],
  ['a frame that is no number', 'position.set', { sessionId: 's', clipId: 'c', frame: Number.NaN }],
  ['no parameters', 'review.get', undefined],
];

/** The host answers the page's own well-formed questions only. */
export async function checkBridge(app: App, { check }: Report): Promise<void> {
  for (const [what, name, params] of wrongQuestions) {
    await check(`the host refuses ${what}`, async () => {
      const reply = await app.page.evaluate(
        ([askedName, askedParams]) => window.rackside.ask(askedName as never, askedParams as never),
        [name, params] as const,
      );
      assert.equal(reply.ok, false);
      assert.equal(!reply.ok && reply.problem.code, 'bad-request');
    });
  }

  await check('a document shown inside the page has no bridge', async () => {
    const found = await app.page.evaluate(
      () =>
        new Promise<string>((resolve) => {
          const frame = document.createElement('iframe');
          frame.addEventListener('load', () => {
            const inner = frame.contentWindow;
            const type = inner === null ? 'no frame' : typeof Reflect.get(inner, 'rackside');
            frame.remove();
            resolve(type);
          });
          frame.srcdoc = '<p>inside</p>';
          document.body.append(frame);
        }),
    );
    assert.equal(found, 'undefined');
  });
}
