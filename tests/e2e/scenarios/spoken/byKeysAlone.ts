import assert from 'node:assert/strict';
import { mkdir, readdir } from 'node:fs/promises';
import path from 'node:path';
import type { App } from '../../harness/app.ts';
import { longestMs } from '../../harness/jobs.ts';
import type { Report } from '../../harness/report.ts';
import { arrowToCell, cellWords, picture, shown } from '../../harness/reviewScreen.ts';
import { until } from '../../harness/until.ts';

const mostStops = 120;

/** From the desk to a handover without a mouse, the focus seen at every stop. */
export async function byKeysAlone(app: App, report: Report, out: string): Promise<void> {
  const { page } = app;
  const press = (key: string) => page.keyboard.press(key);
  const { sessions } = await app.ask('desk.sessions', {});
  const session = sessions[0];
  assert.ok(session !== undefined);
  await mkdir(out, { recursive: true });
  await app.choose({ folder: out });
  await page.reload();
  await page.getByRole('heading', { name: 'Desk', exact: true }).waitFor();

  await report.check(
    'by keys alone: a session is opened, played and stepped through, and its place is said',
    async () => {
      await tabTo(app, `[data-session="${session.id}"] button.row-button`);
      await press('Enter');
      await picture(app);
      const first = (await shown(app)).frame;
      await press('Space');
      await until('the clip to play', async () => (await shown(app)).frame > first);
      await press('Space');
      const { frame } = await until('the picture to stand', async () => {
        const now = await shown(app);
        return now.settled ? now : null;
      });
      await press('Shift+ArrowRight');
      await until('the next frame to be said', async () =>
        ((await page.getByTestId('spoken').textContent()) ?? '').startsWith(`Frame ${frame + 1}, `),
      );
    },
  );

  await report.check('by keys alone: a flag with its severity, fault and note', async () => {
    await arrowToCell(app, 'depth', 3);
    await press('3');
    await page.locator('.fault-picker').waitFor();
    await press('Enter');
    await press('n');
    await page.keyboard.type('half an inch');
    await press('Escape');
    await until('the note', async () => {
      const { review } = await app.ask('review.get', { sessionId: session.id });
      const flag = review.entries[0]?.flags.find(({ note }) => note === 'half an inch');
      return flag?.severity === 'correct' && flag.fault !== null;
    });
    assert.match(await cellWords(app, 'depth', 3), /^Depth, rep 3: correct, /);
    await seenFocus(app);
  });

  await report.check('by keys alone: the letter is read and the session handed over', async () => {
    await tabTo(app, '.screen-head button[aria-keyshortcuts]:has-text("Letter")');
    await press('Enter');
    await page.getByRole('button', { name: 'Edit letter' }).waitFor();
    await page.locator('h1:focus').waitFor();
    await tabTo(app, '.screen-head button:has-text("Hand over")');
    await press('Enter');
    await page.getByRole('button', { name: 'Hand over 1 session…' }).waitFor();
    await tabTo(app, 'label:has-text("Each clip with notes") input');
    await press('Space');
    await tabTo(app, 'button.primary:has-text("Hand over 1 session…")');
    await press('Enter');
    await page.getByTestId('delivered').getByText(out).waitFor({ timeout: longestMs });
    const [name = ''] = await readdir(out);
    assert.ok((await readdir(path.join(out, name))).includes('index.html'));
    await seenFocus(app);
  });
}

/** Goes on with the Tab key to a control; at each stop the focus is seen. */
async function tabTo(app: App, selector: string): Promise<void> {
  const control = await app.page.waitForSelector(selector);
  for (let stops = 0; stops < mostStops; stops += 1) {
    await app.page.keyboard.press('Tab');
    await seenFocus(app);
    if (await control.evaluate((element) => element === document.activeElement)) return;
  }
  assert.fail(`the Tab key never comes to ${selector}`);
}

/** What has the focus shows it, within the window, and with nothing over the whole of it. */
async function seenFocus(app: App): Promise<void> {
  const unseen = await app.page.evaluate(() => {
    const active = document.activeElement;
    if (active === null || active === document.body || active.tagName === 'IFRAME') return null;
    const box = active.getBoundingClientRect();
    const { outlineStyle, outlineWidth } = getComputedStyle(active);
    const shares = [0.1, 0.5, 0.9];
    const isOnTop = shares.some((across) =>
      shares.some((down) => {
        const hit = document.elementFromPoint(box.x + box.width * across, box.y + box.height * down);
        return hit !== null && (active.contains(hit) || hit.closest('label')?.contains(active) === true);
      }),
    );
    // The parts of a date show by themselves which of them has the focus.
    const isMarked = (outlineStyle !== 'none' && outlineWidth !== '0px') || active.matches('input[type="date"]');
    if (isOnTop && isMarked) return null;
    return `${isOnTop ? 'unmarked' : 'hidden'}: ${active.getAttribute('aria-label') ?? active.textContent} ${active.outerHTML.slice(0, 120)}`;
  });
  assert.equal(unseen, null);
}
