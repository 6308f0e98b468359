import assert from 'node:assert/strict';
import type { App } from '../../harness/app.ts';
import type { Report } from '../../harness/report.ts';

/** Puts something into the page and gives the rule that refused it. */
async function refusal(app: App, act: () => void): Promise<string> {
  await app.page.evaluate(() => {
    const seen: string[] = [];
    Object.assign(window, { refusals: seen });
    document.addEventListener('securitypolicyviolation', (event) => seen.push(event.effectiveDirective));
  });
  await app.page.evaluate(act);
  const handle = await app.page.waitForFunction(() => (Reflect.get(window, 'refusals') as string[])[0] ?? false);
  return String(await handle.jsonValue());
}

/** The content policy holds at run time. */
export async function checkPolicy(app: App, { check }: Report): Promise<void> {
  const { page } = app;

  await check('the content policy arrives as a header and allows nothing unsafe', async () => {
    const policy = await page.evaluate(async () => (await fetch('/index.html')).headers.get('content-security-policy'));
    assert.match(policy ?? '', /default-src 'none'/);
    assert.match(policy ?? '', /script-src 'self'(;|$)/);
    assert.doesNotMatch(policy ?? '', /unsafe|\*|https?:|data:/);
  });

  await check('an inline script does not run', async () => {
    const rule = await refusal(app, () => {
      const script = document.createElement('script');
      script.textContent = 'window.inlineRan = true';
      document.body.append(script);
    });
    assert.match(rule, /^script-src/);
    assert.equal(await page.evaluate(() => 'inlineRan' in window), false);
  });

  await check('text is not turned into code', async () => {
    const rule = await refusal(app, () => {
      // Later, so that the page itself asks and not the run's own evaluation.
      setTimeout(() => {
        const make = Reflect.get(window, 'Function') as FunctionConstructor;
        Object.assign(window, { made: make('return 1')() });
      }, 0);
    });
    assert.match(rule, /^script-src/);
    assert.equal(await page.evaluate(() => 'made' in window), false);
  });

  await check('a script, picture, frame and worker from elsewhere are refused', async () => {
    const script = await refusal(app, () => {
      const element = document.createElement('script');
      element.src = 'https://elsewhere.example/x.js';
      document.body.append(element);
    });
    assert.match(script, /^script-src/);
    const picture = await refusal(app, () => {
      const element = document.createElement('img');
      element.src = 'https://elsewhere.example/x.png';
      document.body.append(element);
    });
    assert.equal(picture, 'img-src');
    const frame = await refusal(app, () => {
      const element = document.createElement('iframe');
      element.src = 'https://elsewhere.example/';
      document.body.append(element);
      setTimeout(() => element.remove(), 0);
    });
    assert.equal(frame, 'frame-src');
    const worker = await refusal(app, () => {
      try {
        new Worker(URL.createObjectURL(new Blob(['1'])));
      } catch {
        // Refused aloud; the event tells by which rule.
      }
    });
    assert.equal(worker, 'worker-src');
  });

  await check('the page cannot be framed, not even by itself', async () => {
    const reached = await page.evaluate(
      () =>
        new Promise<boolean>((resolve) => {
          const frame = document.createElement('iframe');
          frame.src = '/index.html';
          frame.addEventListener('load', () => {
            let inside = false;
            try {
              inside = frame.contentDocument?.getElementById('root') != null;
            } catch {
              // Another origin: an error page.
            }
            frame.remove();
            resolve(inside);
          });
          document.body.append(frame);
          setTimeout(() => resolve(false), 1500);
        }),
    );
    assert.equal(reached, false);
  });
}
