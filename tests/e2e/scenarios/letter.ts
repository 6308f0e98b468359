import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import Papa from 'papaparse';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Locator } from 'playwright-core';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import { type Cue, cuesOf } from '../harness/cuesOf.ts';
import { previewed } from '../harness/previewed.ts';
import { openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** From the review to the files that are sent. */
export const letter: Scenario = {
  name: 'letter',
  run: async (bench, report) => {
    const folder = await bench.demoFolder('letter');
    const app = await bench.launch(folder);
    const { page } = app;
    const { sessions } = await app.ask('desk.sessions', {});
    const session = sessions[0];
    assert.ok(session !== undefined);
    await openReview(app, session.id);

    await report.check('the letter is previewed: greeting, grade, caution', async () => {
      await page.getByRole('button', { name: 'Letter' }).click();
      const words = await previewed(app, 'Preview: Letter');
      assert.match(words, /Hello /);
      assert.match(words, new RegExp(`Overall grade: ${session.mark.replace('+', '\\+')}`));
      assert.match(words, /licensed clinician/);
      assert.match(words, /not medical advice/);
      await bench.picture(app, '6-letter');
    });

    const save = async (format: string, file: string): Promise<Buffer> => {
      const target = path.join(folder, file);
      await saveAs(app, format, target);
      return readFile(target);
    };

    await report.check('saved as PDF: title, language, bookmarks and the text in order', async () => {
      const bytes = await save('pdf', 'letter.pdf');
      const pdf = await getDocument({ data: new Uint8Array(bytes) }).promise;
      const { info } = await pdf.getMetadata();
      assert.match(String(Reflect.get(info, 'Title')), /Robin Thale/);
      assert.equal(Reflect.get(info, 'Language'), 'en');
      assert.ok(((await pdf.getOutline()) ?? []).length > 2);
      let text = '';
      for (let number = 1; number <= pdf.numPages; number += 1) {
        const { items } = await (await pdf.getPage(number)).getTextContent();
        text += items.map((item) => ('str' in item ? item.str : '')).join(' ');
      }
      const places = ['Hello', 'Overall grade', 'What to keep', 'What to change', 'Cautions'].map((words) =>
        text.indexOf(words),
      );
      assert.ok(!places.includes(-1), `missing: ${places}`);
      assert.deepEqual(
        [...places].sort((a, b) => a - b),
        places,
      );
    });

    await report.check('saved as HTML: one file, no script, nothing fetched', async () => {
      const html = (await save('html', 'letter.html')).toString();
      assert.match(html, /<html lang="en"/);
      assert.doesNotMatch(html, /<script|https?:\/\/|<link|@import/);
    });

    await report.check('the sheet in short: the flags without what they rest on', async () => {
      await page.getByRole('button', { name: 'Sheet', exact: true }).click();
      await page.getByRole('combobox', { name: 'Length of the sheet' }).selectOption('shortSheet');
      const short = await previewed(app, 'Preview: Short sheet');
      assert.match(short, /Back squat: notes/);
      assert.doesNotMatch(short, /What would raise the grade/);
      await page.getByRole('combobox', { name: 'Length of the sheet' }).selectOption('sheet');
    });

    await report.check('the sheet: CSV read by another library has a row a flag', async () => {
      await page.getByRole('button', { name: 'Sheet', exact: true }).click();
      assert.match(await previewed(app, 'Preview: Sheet'), /<table/);
      await bench.picture(app, '7-sheet');
      const { data, errors } = Papa.parse<string[]>((await save('csv', 'sheet.csv')).toString().trimEnd());
      assert.deepEqual(errors, []);
      assert.equal(data.length, session.flags + 1);
    });

    await report.check("the sheet: WebVTT notes are read whole by the browser's own parser", async () => {
      const notes = (await save('vtt', 'notes.vtt')).toString();
      const cues = await cuesInPage(app, notes);
      assert.equal(cues.length, notes.match(/-->/g)?.length);
      assert.equal(new Set(cues.map(({ id }) => id.replace(/-\d+$/, ''))).size, session.flags);
      for (const { startS, endS, text } of cues) {
        assert.ok(endS > startS);
        assert.ok(text.length > 0);
      }
    });
    await app.close();
  },
};

/** What the coach decides beyond the flags: words of their own, a grade by hand, a letter that stays as sent. */
export const letterInOwnWords: Scenario = {
  name: 'letterInOwnWords',
  run: async (bench, report) => {
    const folder = await bench.demoFolder('own-words');
    const app = await bench.launch(folder);
    const { page } = app;
    const { sessions } = await app.ask('desk.sessions', {});
    const sessionId = sessions[0]?.id ?? '';
    await openReview(app, sessionId);
    await page.getByRole('button', { name: 'Letter' }).click();

    await report.check('a paragraph is put in other words by keyboard, and the letter says them', async () => {
      await page.getByRole('button', { name: 'Edit letter' }).click();
      await page.getByRole('button', { name: /^Edit: Hello/ }).focus();
      await page.keyboard.press('Enter');
      await page.getByRole('textbox', { name: 'Paragraph in your own words' }).fill('Good to see you back, Robin.');
      await bench.picture(app, '9-letter-edit');
      await page.keyboard.press('Control+Enter');
      await page.getByText('Good to see you back, Robin.').waitFor();
      // The keys go on where they were: Enter opens the same paragraph again.
      const again = page.getByRole('button', { name: 'Edit: Good to see you back, Robin.' });
      assert.ok(await again.evaluate((button) => button === document.activeElement));
      await page.getByRole('button', { name: 'Edit letter' }).click();
      assert.match(await previewed(app, 'Preview: Letter'), /Good to see you back, Robin\./);
    });

    await report.check('an emptied paragraph is left out, listed, and brought back, by keys alone', async () => {
      await page.keyboard.press('Control+Shift+E');
      const hello = page.getByRole('button', { name: 'Edit: Good to see you back, Robin.' });
      await focused(hello);
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('Enter');
      await page.keyboard.press('Control+A');
      await page.keyboard.press('Delete');
      await page.keyboard.press('Control+Enter');
      const leftOut = page.getByRole('region', { name: 'Left out' });
      await leftOut.waitFor();
      await bench.picture(app, '9-letter-left-out');
      await leftOut.getByRole('button', { name: /^Bring back: / }).press('Enter');
      await leftOut.waitFor({ state: 'detached' });
    });
    await checkScreen(app, report, await checkerSource(), 'letter being edited');

    await report.check(
      'a paragraph of one’s own is added, typed in two lines with a phrase, and moved by keys',
      async () => {
        await page.keyboard.press('Control+K');
        const phrases = page.getByRole('dialog', { name: 'Phrases' });
        await phrases.getByRole('button', { name: 'Add phrase' }).click();
        await phrases.getByRole('textbox', { name: 'Text' }).fill('Well lifted, {name}.');
        await phrases.getByRole('textbox', { name: 'Name' }).fill('Well done');
        await phrases.getByRole('combobox', { name: 'Number' }).focus();
        await bench.picture(app, '9-phrases');
        await phrases.getByRole('button', { name: 'Close' }).click();
        await page.getByRole('button', { name: 'Edit: Good to see you back, Robin.' }).focus();
        await page.keyboard.press('Control+Shift+A');
        const field = page.getByRole('textbox', { name: 'Paragraph in your own words' });
        await page.getByRole('button', { name: 'Insert: Well done' }).waitFor();
        await focused(field);
        await page.keyboard.press('Control+1');
        await page.keyboard.press('Enter');
        await page.keyboard.type('See you Sunday.');
        assert.equal(await field.inputValue(), 'Well lifted, Robin.\nSee you Sunday.');
        await bench.picture(app, '9-letter-own-paragraph');
        await page.keyboard.press('Control+Enter');
        const own = page.getByRole('button', { name: /^Edit: Well lifted/ });
        await focused(own);
        const place = async (): Promise<number> =>
          (await app.ask('letters.get', { sessionId })).paragraphs.findIndex(({ writer }) => writer === 'coach');
        const before = await place();
        await page.keyboard.press('Control+Shift+PageDown');
        await until('the paragraph to move', async () => (await place()) > before);
        await focused(own);
        await page.keyboard.press('Control+Shift+E');
        assert.match(await previewed(app, 'Preview: Letter'), /Well lifted, Robin\.<\/p>\s*<p[^>]*>See you Sunday\./);
      },
    );

    await report.check('nothing moves when a document was saved', async () => {
      const main = page.getByRole('button', { name: 'Hand over' });
      await page.getByRole('combobox', { name: 'Format', exact: true }).selectOption('md');
      const before = await main.boundingBox();
      await saveAs(app, 'md', path.join(folder, 'own.md'));
      assert.deepEqual(await main.boundingBox(), before);
      await bench.picture(app, '9-letter-saved');
      assert.match(
        (await readFile(path.join(folder, 'own.md'))).toString(),
        /Well lifted, Robin\.\n\nSee you Sunday\./,
      );
    });

    await report.check('words still being typed are kept when the screen is left', async () => {
      await page.getByRole('button', { name: 'Edit letter' }).click();
      await page
        .getByRole('button', { name: /^Edit: / })
        .nth(1)
        .click();
      await page.getByRole('textbox', { name: 'Paragraph in your own words' }).fill('Typed and left.');
      await page.getByRole('button', { name: 'Sheet', exact: true }).click();
      await page.getByRole('button', { name: 'Letter', exact: true }).click();
      const kept = await until('the words', async () => {
        const now = await previewed(app, 'Preview: Letter');
        return now.includes('Typed and left.') ? now : null;
      });
      assert.match(kept, /Good to see you back, Robin\./);
    });

    await report.check('an edit whose facts have changed is told, with what it would say now', async () => {
      const { paragraphs } = await app.ask('letters.get', { sessionId });
      const seen = paragraphs.find((line) => line.id.endsWith('-seen'));
      assert.ok(seen !== undefined);
      await app.ask('letters.edit', { sessionId, paragraph: seen.id, words: 'As we said on the phone.' });
      const { review } = await app.ask('review.get', { sessionId });
      const moved = review.entries
        .flatMap((entry) => entry.flags)
        .find((flag) => seen.id.startsWith(`priority-${flag.criterion}-${flag.fault}-`));
      assert.ok(moved?.id !== undefined && 'frame' in moved.at);
      // The letter tells whole seconds: a second and a half at 30 frames a second is told for sure.
      await app.ask('flags.update', { flagId: moved.id, change: { frame: moved.at.frame + 45 } });
      await page.getByRole('button', { name: 'Edit letter' }).click();
      await page.getByText('Changed since you wrote this.').waitFor();
      await bench.picture(app, '9-letter-stale');
      await page.getByRole('button', { name: 'Edit letter' }).click();
    });

    await report.check('a grade set by hand stands with its reason in letter, review and desk', async () => {
      await page.getByRole('button', { name: 'Set grade by hand: session' }).click();
      await page.getByRole('textbox', { name: 'Points, 0 to 100' }).fill('91');
      await page.getByRole('textbox', { name: 'Reason' }).fill('Back after a month off.');
      await page.getByRole('button', { name: 'Set grade', exact: true }).click();
      await page.getByTestId('by-hand').first().waitFor();
      assert.match(await previewed(app, 'Preview: Letter'), /A-[\s\S]*Back after a month off\./);
      await bench.picture(app, '9-grade-by-hand');
      await page.getByRole('button', { name: 'Review' }).click();
      await page.getByTestId('session-grade').getByText('by hand').waitFor();
      await page.getByRole('button', { name: 'Desk' }).click();
      await page.getByRole('row', { name: /A- +set by hand/ }).waitFor();
      await openReview(app, sessionId);
      await page.getByRole('button', { name: 'Letter' }).click();
      await page.getByTestId('by-hand').first().waitFor();
    });

    await report.check('a letter marked as sent stays as it was when the grade changes', async () => {
      await page.getByRole('button', { name: 'Mark as sent' }).click();
      await page.getByRole('button', { name: /^Version 1/ }).click();
      await page.getByRole('button', { name: /^Version 1/ }).click();
      await page.getByRole('button', { name: 'Mark as sent, version 2' }).click();
      await page.getByRole('dialog', { name: 'Mark the same letter as sent again?' }).waitFor();
      await bench.picture(app, '9-letter-send-again');
      await page.getByRole('button', { name: 'Cancel' }).click();
      await page.getByRole('button', { name: /^Version 1/ }).click();
      const sent = await previewed(app, 'Letter as sent, version 1');
      assert.match(sent, /Back after a month off\./);
      const target = path.join(folder, 'sent.html');
      await page.getByRole('button', { name: 'Use the grade from the flags: session' }).click();
      await page.getByRole('button', { name: 'Set grade by hand: session' }).waitFor();
      assert.equal(await previewed(app, 'Letter as sent, version 1'), sent);
      await saveAs(app, 'html', target);
      assert.equal((await readFile(target)).toString(), sent);
      await page.getByRole('button', { name: /^Version 1/ }).click();
      assert.doesNotMatch(await previewed(app, 'Preview: Letter'), /Back after a month off\./);
    });

    await report.check('the letter is written in German when asked', async () => {
      await page.getByRole('combobox', { name: 'Language' }).selectOption('de');
      const words = await until('the German letter', async () => {
        const now = await previewed(app, 'Preview: Letter');
        return now.includes('<html lang="de"') ? now : null;
      });
      assert.match(words, /Gesamtnote/);
      await bench.picture(app, '9-letter-german');
    });
    await app.close();
  },
};

const focused = (control: Locator): Promise<unknown> =>
  until('the focus', () => control.evaluate((element) => element === document.activeElement));

/** Saves what is shown in a format, where the person chose. */
async function saveAs(app: App, format: string, target: string): Promise<void> {
  await app.choose({ save: target });
  await app.page.getByRole('combobox', { name: 'Format', exact: true }).selectOption(format);
  await app.page.getByRole('button', { name: 'Save', exact: true }).click();
  await app.page.getByText(`Saved to ${target}`).waitFor();
}

/** Gives the text to a text track of the page, whose own policy would refuse a file that is not the app's. */
async function cuesInPage(app: App, notes: string): Promise<readonly Cue[]> {
  const session = await app.page.context().newCDPSession(app.page);
  await session.send('Page.setBypassCSP', { enabled: true });
  await app.page.reload();
  return app.page.evaluate(cuesOf, notes);
}
