import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { App } from '../harness/app.ts';
import { drag } from '../harness/drag.ts';
import { pointOnScreen } from '../harness/pointOnScreen.ts';
import { goToFrame, openReview, picture } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** Drawing over the picture: by mouse and by keys alone, in the picture's own pixels, within a stretch of time. */
export const overlays: Scenario = {
  name: 'overlays',
  run: async (bench, report) => {
    const folder = await bench.demoFolder('overlays');
    const app = await bench.launch(folder);
    const { page } = app;
    const { sessions } = await app.ask('desk.sessions', {});
    const sessionId = sessions[0]?.id ?? '';
    await openReview(app, sessionId);
    const drawings = async (from: App = app) =>
      (await from.ask('review.get', { sessionId })).review.entries[0]?.clips[0]?.drawings ?? [];
    const marks = page.locator('[data-drawing]');

    await report.check(
      'an angle drawn with the mouse says the degrees of its points, wherever the picture lies',
      async () => {
        await goToFrame(app, 40);
        await page.keyboard.press('Shift+P');
        await page.getByRole('menuitemcheckbox', { name: /^Draw/ }).click();
        await page.getByRole('radio', { name: 'Angle' }).check({ force: true });
        const places = [
          await pointOnScreen(app, 400, 150),
          await pointOnScreen(app, 400, 300),
          await pointOnScreen(app, 529.9, 375),
        ];
        for (const { x, y } of places) await page.mouse.click(x, y);
        const [drawn] = await until('the angle', async () => {
          const now = await drawings();
          return now.length === 1 ? now : null;
        });
        assert.ok(drawn?.shape === 'angle');
        const [one, apex, other] = drawn.points;
        for (const [point, x, y] of [
          [one, 400, 150],
          [apex, 400, 300],
          [other, 529.9, 375],
        ] as const) {
          assert.ok(Math.abs(point.x - x) < 2 && Math.abs(point.y - y) < 2, JSON.stringify(drawn.points));
        }
        // By the law of cosines, not by the way the page works it out.
        const side = (a: typeof one, b: typeof one): number => Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2);
        const [a, b, c] = [side(apex, one), side(apex, other), side(one, other)];
        const degrees = (Math.acos((a * a + b * b - c * c) / (2 * a * b)) * 180) / Math.PI;
        await marks.first().waitFor();
        assert.equal(await page.locator('.drawn-words').first().textContent(), `${Math.round(degrees)}°`);
        assert.deepEqual(drawn.from, { frame: 40, ticks: 'ticks' in drawn.from ? drawn.from.ticks : 0 });
        await bench.picture(app, '11-angle');
      },
    );

    await report.check('undo takes it off the picture, redo puts it back', async () => {
      await page.keyboard.press('Control+z');
      await until('an empty picture', async () => (await marks.count()) === 0);
      await page.keyboard.press('Control+Shift+z');
      await until('the angle again', async () => (await marks.count()) === 1);
    });

    await report.check(
      'a drawing is dragged by a point, and as a whole, without the zoomed picture moving',
      async () => {
        await page.keyboard.press('+');
        await page.getByRole('radio', { name: 'Select' }).check({ force: true });
        const transform = () => page.getByTestId('stage-picture').getAttribute('style');
        const before = await transform();
        await drag(app, [400, 225], [430, 235]);
        const whole = await until('a move', async () => {
          const [now] = await drawings();
          return now !== undefined && Math.abs((now.points[1]?.x ?? 0) - 430) < 3 ? now : null;
        });
        await drag(app, [430, 310], [450, 330]);
        await until('the apex alone moved', async () => {
          const [now] = await drawings();
          return Math.abs((now?.points[1]?.x ?? 0) - 450) < 3 && now?.points[0]?.x === whole.points[0]?.x;
        });
        assert.equal(await transform(), before);
        await page.keyboard.press('0');
      },
    );

    await report.check('keys alone: a circle is placed, moved, its rim moved, and taken away', async () => {
      await page.keyboard.press('Escape');
      await page.keyboard.press('Escape');
      await page.getByRole('radio', { name: 'Select' }).waitFor({ state: 'detached' });
      await page.keyboard.press('d');
      for (let step = 0; step < 4; step += 1) await page.keyboard.press('ArrowRight');
      assert.equal(await page.getByRole('radio', { name: 'Circle' }).isChecked(), true);
      await page.keyboard.press('Enter');
      const circle = async () => (await drawings()).find(({ shape }) => shape === 'circle');
      const placed = await until('the circle', async () => (await circle()) ?? null);
      await page.locator('[data-shape="circle"]:focus').waitFor();
      await page.keyboard.press('Shift+ArrowRight');
      await page.keyboard.press('ArrowUp');
      const [middle, rim] = placed.points;
      await until('the circle moved', async () => {
        const now = (await circle())?.points[0];
        return now?.x === (middle?.x ?? 0) + 10 && now?.y === (middle?.y ?? 0) - 1;
      });
      await page.keyboard.press('Tab');
      await page.keyboard.press('Tab');
      await page.keyboard.press('ArrowRight');
      await until('its rim moved', async () => (await circle())?.points[1]?.x === (rim?.x ?? 0) + 11);
      await bench.picture(app, '11-circle-by-keys');
      await page.keyboard.press('Delete');
      await until('the circle gone', async () => (await circle()) === undefined);
    });

    await report.check('a half-drawn shape is let go with Escape, and the next click begins a new one', async () => {
      const half = page.locator('.overlays > .drawn-chalk');
      await page.getByRole('radio', { name: 'Line', exact: true }).check({ force: true });
      const before = (await drawings()).length;
      await clickAt(app, 100, 100);
      await until('a half-drawn line', async () => (await half.count()) === 1);
      await page.keyboard.press('Escape');
      await until('no line', async () => (await half.count()) === 0);
      await clickAt(app, 120, 120);
      await clickAt(app, 220, 140);
      const drawn = await until('a line', async () => {
        const now = await drawings();
        return now.length === before + 1 ? (now.at(-1) ?? null) : null;
      });
      assert.ok(Math.abs((drawn.points[0]?.x ?? 0) - 120) < 2);
      await until('it on the picture', async () => (await marks.count()) === before + 1);
      await page.keyboard.press('Control+z');
      await until('it undone', async () => (await marks.count()) === before);
    });

    await report.check('words, a plumb, a line and a free stroke', async () => {
      await page.getByRole('radio', { name: 'Text' }).check({ force: true });
      await clickAt(app, 560, 120);
      await page.getByRole('textbox', { name: 'Text on the picture' }).fill('Hips back first');
      await page.keyboard.press('Enter');
      await until('the words', async () => (await drawings()).some(({ shape }) => shape === 'text'));
      await page.getByRole('radio', { name: 'Plumb line' }).check({ force: true });
      await drag(app, [720, 200], [760, 430]);
      const plumb = await until(
        'the plumb',
        async () => (await drawings()).find(({ shape }) => shape === 'plumb') ?? null,
      );
      assert.equal(plumb.points[0]?.x, plumb.points[1]?.x);
      await page.getByRole('radio', { name: 'Freehand' }).check({ force: true });
      await drag(app, [200, 200], [320, 330]);
      await page.getByRole('radio', { name: 'Line', exact: true }).check({ force: true });
      await drag(app, [150, 420], [600, 440]);
      await until('five drawings', async () => (await drawings()).length === 5 && (await marks.count()) === 5);
      await bench.picture(app, '11-every-shape');
    });

    await report.check('the screen with drawings: nothing serious or critical', async () => {
      await page.evaluate(await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8'));
      const grave = await page.evaluate(async () => {
        type Found = { id: string; impact: string | null; nodes: { target: unknown[] }[] };
        const axe = Reflect.get(window, 'axe') as { run: (root: Document) => Promise<{ violations: Found[] }> };
        const { violations } = await axe.run(document);
        return violations
          .filter(({ impact }) => impact === 'serious' || impact === 'critical')
          .map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
      });
      assert.deepEqual(grave, []);
    });

    await report.check('it shows from its first to its last frame, and no longer', async () => {
      const lastFrame = page.getByRole('spinbutton', { name: /^To frame: Angle/ });
      await lastFrame.fill('44');
      await lastFrame.press('Enter');
      await until('the new end', async () => {
        const to = (await drawings())[0]?.to;
        return to !== undefined && 'frame' in to && to.frame === 44;
      });
      await page.getByRole('button', { name: 'Done', exact: true }).click();
      const angle = page.locator('[data-shape="angle"]');
      for (const [frame, shows] of [
        [39, 0],
        [40, 1],
        [44, 1],
        [45, 0],
      ] as const) {
        await goToFrame(app, frame);
        await until(`${shows} at frame ${frame}`, async () => (await angle.count()) === shows);
      }
    });

    await report.check('words are changed by keys, and a drawing is reached again by Tab', async () => {
      await page.keyboard.press('d');
      await page
        .getByTestId('drawing-row')
        .getByRole('button', { name: /^Text “Hips back first”, drawing/ })
        .focus();
      await page.keyboard.press('Enter');
      const words = page.getByRole('textbox', { name: 'Text on the picture' });
      await page.locator('[data-shape="text"]:focus').waitFor();
      await page.keyboard.press('Enter');
      await words.fill('Hips first');
      await page.keyboard.press('Enter');
      await until('the new words', async () =>
        (await drawings()).some((drawing) => drawing.shape === 'text' && drawing.text === 'Hips first'),
      );
      await page.locator('[data-shape="text"]:focus').waitFor();
      await page.keyboard.press('Tab');
      assert.equal(await page.evaluate(() => document.activeElement?.getAttribute('data-shape')), 'plumb');
      await page.keyboard.press('Escape');
      await page.getByRole('radio', { name: 'Select' }).waitFor({ state: 'detached' });
    });

    await report.check('on an upright phone clip too, the layer lies on the picture', async () => {
      await page.keyboard.press('Shift+PageDown');
      await page.keyboard.press('Shift+PageDown');
      await page.getByLabel(/^Clip /).waitFor();
      const off = await until('the picture', () =>
        page.evaluate(() => {
          const video = document.querySelector('video');
          const box = document.querySelector('svg.overlays')?.getAttribute('viewBox')?.split(' ').map(Number);
          if (video === null || video.videoWidth === 0 || box === undefined) return null;
          const sides = [video.videoHeight / video.videoWidth, (box[3] ?? 0) / (box[2] ?? 1)];
          return (sides[0] ?? 0) > 1 ? { off: Math.abs((sides[0] ?? 0) - (sides[1] ?? 0)) } : null;
        }),
      );
      assert.ok(off.off < 0.01, `sides differ by ${off.off}`);
      await page.keyboard.press('Shift+PageUp');
      await page.keyboard.press('Shift+PageUp');
      await picture(app);
    });

    const kept = await drawings();
    await goToFrame(app, 42);
    await app.close();
    const again = await bench.launch(folder);
    await report.check('drawings are there after a restart, in the same places', async () => {
      await openReview(again, sessionId);
      await picture(again);
      assert.deepEqual(await drawings(again), kept);
      await goToFrame(again, 42);
      await until('them on the picture', async () => (await again.page.locator('[data-drawing]').count()) === 5);
    });
    await again.close();
  },
};

async function clickAt(app: App, x: number, y: number): Promise<void> {
  const place = await pointOnScreen(app, x, y);
  await app.page.mouse.click(place.x, place.y);
}
