import assert from 'node:assert/strict';
import type { App } from '../harness/app.ts';
import { openReview, shownAt } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** The strip: zoomed at the pointer, edges of reps moved by pointer and by key. */
export const strip: Scenario = {
  name: 'strip',
  run: async (bench, report) => {
    const app = await bench.launch(await bench.demoFolder('strip'));
    const { page } = app;
    const { sessions } = await app.ask('desk.sessions', {});
    const sessionId = sessions[0]?.id ?? '';
    await openReview(app, sessionId);
    const track = page.getByRole('slider', { name: 'Position in the clip' });

    await report.check(
      'the wheel shows less of the clip, larger: a click still shows the frame under the pointer',
      async () => {
        const box = await track.boundingBox();
        assert.ok(box !== null);
        await page.mouse.move(box.x + box.width / 2, box.y + 10);
        await page.mouse.wheel(0, -600);
        await page.getByTestId('overview').waitFor();
        await bench.picture(app, '13-strip');
        // Four times as large round the middle of 423 frames: a tenth from the left edge is share 0.375 + 0.025.
        await page.mouse.click(box.x + box.width * 0.1, (await track.boundingBox())?.y ?? 0);
        const { table } = await frameTable(app, sessionId);
        const share = 0.4;
        const endTicks = table.endTicks;
        const frame = table.ticks.findLastIndex((ticks) => ticks <= share * endTicks);
        await until(`about frame ${frame}`, async () => {
          const now = Number(await page.getByTestId('frame-number').textContent());
          return Math.abs(now - frame) <= 1;
        });
        await page.keyboard.press('Control+PageDown');
        await page.keyboard.press('Control+PageDown');
        await page.getByTestId('overview').waitFor({ state: 'detached' });
      },
    );

    await report.check(
      'an edge is moved by the arrow keys a frame at a time, and the picture goes with it',
      async () => {
        const edge = page.getByRole('slider', { name: 'Stretched end of rep 2' });
        const before = Number(await edge.getAttribute('aria-valuenow'));
        await edge.focus();
        await page.keyboard.press('ArrowRight');
        await until('the edge to move', async () => Number(await edge.getAttribute('aria-valuenow')) === before + 1);
        await shownAt(app, before + 1);
        await page.keyboard.press('Control+z');
        await until('the edge back', async () => Number(await edge.getAttribute('aria-valuenow')) === before);
      },
    );

    await report.check('an edge is dragged; past its neighbour it stays and says why', async () => {
      const edge = page.getByRole('slider', { name: 'End of rep 1', exact: true });
      const before = Number(await edge.getAttribute('aria-valuenow'));
      await drag(app, 'End of rep 1', 12);
      await until('the edge to move', async () => Number(await edge.getAttribute('aria-valuenow')) > before);
      const moved = Number(await edge.getAttribute('aria-valuenow'));
      await drag(app, 'End of rep 1', 400);
      await page.getByText(/can’t go past its neighbours/).waitFor();
      assert.equal(Number(await edge.getAttribute('aria-valuenow')), moved);
      await bench.picture(app, '13-edges');
    });
    await app.close();
  },
};

async function drag(app: App, name: string, byPx: number): Promise<void> {
  const box = await app.page.getByRole('slider', { name, exact: true }).boundingBox();
  assert.ok(box !== null);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await app.page.mouse.move(x, y);
  await app.page.mouse.down();
  await app.page.mouse.move(x + byPx, y, { steps: 5 });
  await app.page.mouse.up();
}

async function frameTable(app: App, sessionId: string) {
  const { media } = await app.ask('review.get', { sessionId });
  return app.ask('clips.frameTable', { clipId: media[0]?.clipId ?? '' });
}
