import assert from 'node:assert/strict';
import type { Suggestion } from '../../../../engine/motion/suggestion.ts';
import { sayMeasuring } from '../../../../engine/wording/sayMeasuring.ts';
import type { App } from '../../harness/app.ts';
import type { Report } from '../../harness/report.ts';
import { cellWords, shown } from '../../harness/reviewScreen.ts';
import { until } from '../../harness/until.ts';
import { measuresOf } from './measuresOf.ts';

type Story = {
  readonly app: App;
  readonly report: Report;
  readonly sessionId: string;
  readonly clipId: string;
  readonly picture: (name: string) => Promise<string>;
};

const shortOfDepth = ({ criterion, severity }: Suggestion): boolean => criterion === 'depth' && severity !== 'keep';

const flagsOf = async (app: App, sessionId: string) =>
  (await app.ask('review.get', { sessionId })).review.entries[0]?.flags ?? [];

/** Suggestions by keys alone: gone to, changed, accepted, dismissed. */
export async function checkSuggestions({ app, report, sessionId, clipId, picture }: Story): Promise<void> {
  const { page } = app;
  const chosen = page.locator('[data-testid="suggestion"][data-chosen="true"]');

  await report.check('the first rep, 8.6 cm short of depth, is proposed as a flag with its number', async () => {
    const { suggestions } = await measuresOf(app, clipId);
    const depth = suggestions.find(shortOfDepth);
    assert.ok(depth !== undefined, JSON.stringify(suggestions));
    assert.ok(depth.reps.includes(1) && !depth.reps.includes(2), JSON.stringify(depth));
    assert.match(sayMeasuring(depth.message, 'en'), /\d/);
  });

  await report.check('keys go to a suggestion and its moment; accepted it is a flag on the card', async () => {
    const { suggestions } = await measuresOf(app, clipId);
    const place = suggestions.findIndex(shortOfDepth);
    for (let step = 0; step <= place; step += 1) await page.keyboard.press('.');
    await page.locator(`[data-suggestion="${suggestions[place]?.id}"][data-chosen="true"]`).waitFor();
    await until('its moment', async () => {
      return Math.abs((await shown(app)).frame / 30 - (suggestions[place]?.atS ?? 0)) < 0.05;
    });
    await picture('16-suggestions');
    await chosen.getByRole('combobox', { name: 'Severity' }).selectOption('adjust');
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press('y');
    const flag = await until('the flag', async () => {
      return (await flagsOf(app, sessionId)).find(({ criterion }) => criterion === 'depth') ?? null;
    });
    assert.equal(flag.severity, 'adjust');
    const message = suggestions[place]?.message;
    assert.equal(flag.note, message && sayMeasuring(message, 'en'));
    assert.deepEqual(flag.reps, suggestions[place]?.reps);
    // Accepting goes on to the next suggestion; only then is the card asked for.
    await page.locator(`[data-suggestion="${suggestions[place]?.id}"]`).waitFor({ state: 'detached' });
    await page.keyboard.press('t');
    await until('the mark on the card', async () => /adjust/.test(await cellWords(app, 'depth', 1)));
    await picture('16-accepted');
    await page.keyboard.press('t');
  });

  await report.check('undo brings the suggestion back, redo accepts it again', async () => {
    const flagged = (await flagsOf(app, sessionId)).find(({ criterion }) => criterion === 'depth');
    const waiting = async () =>
      (await measuresOf(app, clipId)).suggestions.some(({ message }) => sayMeasuring(message, 'en') === flagged?.note);
    await page.keyboard.press('Control+z');
    await until('the suggestion again', waiting);
    await page
      .getByTestId('suggestion')
      .getByText(flagged?.note ?? '')
      .waitFor();
    await page.keyboard.press('Control+Shift+z');
    await until('the flag again', async () => !(await waiting()));
  });

  await report.check('a suggestion is dismissed by its key, and the next one is in hand', async () => {
    const before = (await measuresOf(app, clipId)).suggestions;
    assert.ok(before.length > 0, 'a suggestion is left');
    await page.keyboard.press('.');
    await chosen.waitFor();
    await page.keyboard.press('q');
    await until('it to be put aside', async () => (await measuresOf(app, clipId)).dismissed.length === 1);
    await page.getByText('Dismissed (1)').waitFor();
    assert.equal((await measuresOf(app, clipId)).suggestions.length, before.length - 1);
  });
}
