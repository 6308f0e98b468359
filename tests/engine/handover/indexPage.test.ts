import { createHash } from 'node:crypto';
import { Script } from 'node:vm';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { startPageScript } from '../../../electron/backend/handover/package/startPageScript.ts';
import { paperColours } from '../../../engine/document/paperColours.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import type { FileInFolder } from '../../../engine/handover/handoverFolder.ts';
import { writeIndexPage } from '../../../engine/handover/indexPage.ts';
import { htmlFaults } from '../document/checkHtml.ts';
import { catalogue, draft, sessionOf } from '../letter/sample.ts';
import { hostileWords, sessionWithNotes } from '../sheet/hostileWords.ts';
import { camera, clipInFolder, measurement, folderOf as scriptlessFolder } from './folder.ts';

const short = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' as const };
const review = sessionOf([
  draft({
    flags: [
      { ...short, reps: [2] },
      { ...short, reps: [1], note: 'Half way' },
    ],
  }),
  draft({ exercise: 'bench-press' }),
]);

const files: readonly FileInFolder[] = [
  { name: 'letter.pdf', kind: 'letter' },
  { name: 'clips/back squat, notes.mp4', kind: 'annotatedClip', clipId: 'back-squat-clip' },
];
const script = await startPageScript();
const folderOf: typeof scriptlessFolder = (of, rest) => scriptlessFolder(of, { script, ...rest });
const page = writeIndexPage(folderOf(review, { files }));

/** What stands in the page's scripts: the data, then the code. */
const scriptsOf = (html: string): string[] =>
  [...html.matchAll(/<script[^>]*>(.*?)<\/script>/gs)].map(([, words]) => words ?? '');

type Data = {
  readonly clips: readonly {
    readonly notes: readonly { readonly atS: number; readonly seekS: number }[];
    readonly cues: readonly { readonly fromS: number; readonly toS: number; readonly text: string }[];
    readonly reps: readonly { readonly fromS: number; readonly toS: number; readonly text: string }[];
    readonly loadPath: {
      readonly reps: readonly (readonly number[])[];
      readonly points: readonly (readonly [number, number] | null)[];
      readonly ontoFrame: readonly (readonly number[])[] | null;
    } | null;
    readonly body: readonly unknown[] | null;
  }[];
};
const dataOf = (html: string): Data => JSON.parse(scriptsOf(html)[0] ?? '');

describe('the start page', () => {
  it('asks for nothing outside its folder and runs no script but its own', () => {
    expect(page).not.toMatch(/https?:|\/\/[a-z]|@import|url\(/i);
    const [, policy = ''] = /Content-Security-Policy" content="([^"]*)"/.exec(page) ?? [];
    const hash = createHash('sha256')
      .update(scriptsOf(page)[1] ?? '')
      .digest('base64');
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain(`script-src 'sha256-${hash}';`);
    expect(policy).toContain('font-src data:;');
    expect(policy).not.toMatch(/connect-src|frame-src|unsafe-eval|script-src[^;]*unsafe-inline|\*/);
    expect(page).toContain('src="clips/back%20squat%20%231.mp4"');
  });

  it('is sound for an HTML checker, and its script for the language’s own parser', async () => {
    expect(await htmlFaults(page)).toEqual([]);
    expect(() => new Script(scriptsOf(page)[1] ?? '')).not.toThrow();
  });

  it('lists the notes of a clip in the order of their times, each a button by its name', () => {
    const times = [...page.matchAll(/class="note"[^>]*><time>([^<]*)<\/time> (Rep \d)/g)].map(([, at, rep]) => [
      at,
      rep,
    ]);
    // Frames 40 and 41 of 30 a second.
    expect(times).toEqual([
      ['0:01.333', 'Rep 2'],
      ['0:01.367', 'Rep 1'],
    ]);
  });

  it('sets a stop apart from the other notes', () => {
    const unsafe = sessionOf([
      draft({
        flags: [
          { ...short, reps: [1] },
          { criterion: 'spinePosition', severity: 'stop', reps: [2] },
        ],
      }),
    ]);
    const stops = (of: typeof review) => writeIndexPage(folderOf(of)).match(/<li class="stop">\n.*/g) ?? [];
    expect(stops(unsafe)).toEqual([expect.stringContaining('stop\u00A0×')]);
    expect(stops(review)).toEqual([]);
  });

  it('seeks to the middle of a note’s frame', () => {
    const [clip] = dataOf(page).clips;
    expect(clip?.notes.map(({ seekS }) => seekS)).toEqual([expect.closeTo(40.5 / 30, 5), expect.closeTo(41.5 / 30, 5)]);
  });

  it('has a chapter for each rep, one after the other to the end', () => {
    const [clip] = dataOf(page).clips;
    expect(clip?.reps.map(({ text }) => text)).toEqual(['Rep 1', 'Rep 2', 'Rep 3', 'Rep 4', 'Rep 5']);
    expect(clip?.reps.map(({ fromS }) => fromS)).toEqual([1, 5, 9, 13, 17]);
    expect(clip?.reps.at(-1)?.toS).toBe(30);
  });

  it('holds the notes over the picture as the timed notes say them', () => {
    const [clip] = dataOf(page).clips;
    expect(clip?.cues[0]?.text).toContain('Rep 2 · Depth · correct');
    for (const { fromS, toS } of clip?.cues ?? []) expect(toS).toBeGreaterThan(fromS);
  });

  it('links to the files of the session and, with the clip, to the clip’s own', () => {
    expect(page).toMatch(/<h2 id="files">Documents<\/h2>\n<ul class="documents">\n<li>.*href="letter.pdf".*<\/li>/);
    const [squat = ''] = /<section class="clip" id="clip-1".*?<\/section>/s.exec(page) ?? [];
    expect(squat).toContain('<a href="clips/back%20squat%2C%20notes.mp4">Clip with notes in the picture (MP4)</a>');
  });

  it('offers each document to read and to print, and folds away every other format', async () => {
    const many: readonly FileInFolder[] = [
      { name: 'letter.html', kind: 'letter' },
      { name: 'sheet.json', kind: 'data' },
      { name: 'letter.pdf', kind: 'letter' },
      { name: 'letter.md', kind: 'letter' },
      { name: 'sheet.pdf', kind: 'sheet' },
      { name: 'measures.csv', kind: 'measures' },
    ];
    const html = writeIndexPage(folderOf(review, { files: many }));
    const [nav = ''] = /<nav aria-labelledby="files">.*?<\/nav>/s.exec(html) ?? [];
    const [read = '', folded = ''] = nav.split('<details>');
    const words = (part: string) =>
      [...part.matchAll(/<a [^>]*>(.*?)<\/a>/g)].map(([, link = '']) => link.replace(/<[^>]*>/g, ''));
    expect(words(read)).toEqual(['Letter: Read', 'Letter: Print (PDF)', 'Review sheet: Print (PDF)']);
    expect(read.match(/<li>/g)).toHaveLength(2);
    expect(words(folded)).toEqual(['sheet.json', 'Letter (MD)', 'measures.csv']);
    expect(await htmlFaults(html)).toEqual([]);
  });

  it('plays by a button too, and leaves the notes out of the picture until they are asked for', () => {
    expect(page).toContain('<button type="button" class="play">Play</button>');
    expect(page).toMatch(/data-layer="cues"> Notes/);
    expect(page).toMatch(/data-layer="load-path" checked> Load path/);
  });

  it('says which keys there are and lets them be turned off (WCAG 2.2, success criterion 2.1.4)', () => {
    expect(page).toMatch(/<input type="checkbox" checked> Keys: N goes to the next note, B to the previous one/);
  });

  it('is in German where the letter is', async () => {
    const german = writeIndexPage(folderOf(review, { catalogue: translated(catalogue, 'de'), files }));
    expect(german).toContain('<html lang="de">');
    expect(german).toContain('Nächste Notiz <span class="key">(N)</span>');
    expect(german).toContain('<span class="heard">Brief: </span>Drucken (PDF)</a>');
    expect(german).toContain('Hallo Alva.');
    expect(await htmlFaults(german)).toEqual([]);
  });
});

describe('what the start page opens with', () => {
  /** Where something stands in the page; -1 = nowhere. */
  const at = (html: string, ...parts: readonly string[]) => parts.map((part) => html.indexOf(part));

  it('is the grade, a line to the person and the clip; the documents come last', () => {
    const places = at(
      page,
      '<p class="mark">',
      '<p class="personal">',
      '<video',
      'class="note"',
      '<h2 id="files">',
      '<footer>',
    );
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((one, other) => one - other));
  });

  const personal = (html: string) => /<p class="personal">(.*?)<\/p>/.exec(html)?.[1] ?? '';

  it('names the trainee, and the one cue to take along', () => {
    expect(personal(page)).toMatch(/^Hello Alva\. .*Your cue for next time: “/);
  });

  it('keeps nothing that is the first thing to change', () => {
    const both = sessionOf([
      draft({
        flags: [
          { ...short, reps: [1] },
          { criterion: 'depth', severity: 'keep', reps: [2] },
        ],
      }),
    ]);
    expect(personal(writeIndexPage(folderOf(both)))).not.toContain('Depth: keep it');
    const other = sessionOf([
      draft({
        flags: [
          { ...short, reps: [1] },
          { criterion: 'barPath', severity: 'keep', reps: [2] },
        ],
      }),
    ]);
    expect(personal(writeIndexPage(folderOf(other)))).toContain('Bar path: keep it just like that.');
  });

  it('has no cue and no praise beside something unsafe, or pain that stops the lift', () => {
    const unsafe = sessionOf([draft({ flags: [{ ...short, severity: 'stop', reps: [1] }] })]);
    expect(personal(writeIndexPage(folderOf(unsafe)))).toBe(
      'Hello Alva. Something unsafe was in this session: read the note above before your next set.',
    );
    const painful = sessionOf([draft({ flags: [{ ...short, reps: [1] }] })], {
      session: { id: 's', title: '', date: '2026-03-01', notes: '', painNote: 'Sharp pain in the knee, 8 of 10' },
    });
    expect(personal(writeIndexPage(folderOf(painful)))).toBe(
      'Hello Alva. Please read the note on your pain above first.',
    );
  });

  it('speaks to nobody else in a self-review', () => {
    const own = writeIndexPage(folderOf({ ...review, voice: 'self' }));
    expect(personal(own)).toContain('My cue for next time: “');
    expect(personal(own)).not.toMatch(/Hello|[Yy]our/);
  });
});

describe('what lies over the picture', () => {
  it('is the path of each rep, in pixels, with its gaps', () => {
    const path = dataOf(page).clips[0]?.loadPath;
    expect(path?.reps).toEqual([
      [30, 60],
      [90, 120],
    ]);
    expect(path?.points.slice(49, 52)).toEqual([[320, 49], null, [320, 51]]);
    expect(path?.ontoFrame).toBeNull();
  });

  it('lies where the load is in every frame of a camera that moved', () => {
    const moved = writeIndexPage(folderOf(review, { clips: new Map([['back-squat-clip', clipInFolder({ camera })]]) }));
    const path = dataOf(moved).clips[0]?.loadPath;
    for (const frame of [0, 45, 100, 899]) {
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = path?.ontoFrame?.[frame] ?? [];
      const [x, y] = path?.points[frame] ?? [0, 0];
      // SVG 2, matrix(a b c d e f): x' = a x + c y + e, y' = b x + d y + f. The load is at (320, frame) there.
      expect(Math.hypot(a * x + c * y + e - 320, b * x + d * y + f - frame)).toBeLessThan(0.3);
    }
  });

  it('is left out where nothing was measured, and so is what switches it', async () => {
    const bare = writeIndexPage(
      folderOf(review, { clips: new Map([['back-squat-clip', clipInFolder({ measurement: null, body: null })]]) }),
    );
    expect(bare).not.toMatch(/data-layer="(load-path|body)"/);
    expect(bare).toContain('data-layer="cues"');
    expect(bare).toContain('This clip is not in the folder.');
    expect(await htmlFaults(bare)).toEqual([]);
  });

  it('is hidden from those who hear the page, who have the angles in words', () => {
    expect(page.match(/<svg [^>]*>/g)?.every((tag) => tag.includes('aria-hidden="true"'))).toBe(true);
    expect(page).toContain('<p class="readout"></p>');
    expect(measurement.reps).toHaveLength(2);
  });
});

describe('whatever a person writes', () => {
  it('stays words, in the page and in its data', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.oneof(hostileWords, fc.constantFrom('</script><script>alert(1)</script>', '<!--<script>', ']]>')), {
          minLength: 1,
          maxLength: 4,
        }),
        async (notes) => {
          const html = writeIndexPage(folderOf(sessionWithNotes(notes)));
          expect(html.match(/<script/g)).toHaveLength(2);
          expect(html.match(/<\/script/g)).toHaveLength(2);
          expect(scriptsOf(html)[0]).not.toContain('<');
          expect(dataOf(html).clips[0]?.notes).toHaveLength(notes.length);
          expect(html.isWellFormed()).toBe(true);
          expect(await htmlFaults(html)).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('of five hundred notes, or none, leaves a sound page', async () => {
    const many = sessionOf([draft({ flags: Array.from({ length: 500 }, () => ({ ...short, reps: [1] })) })]);
    const html = writeIndexPage(folderOf(many));
    expect(html.match(/class="note"/g)).toHaveLength(500);
    expect(await htmlFaults(html)).toEqual([]);
    for (const empty of [sessionOf([]), sessionOf([draft()])]) {
      expect(await htmlFaults(writeIndexPage(folderOf(empty)))).toEqual([]);
    }
  });
});

/** Relative luminance and contrast (WCAG 2.2, definitions). */
function contrast(one: string, other: string): number {
  const luminance = (colour: string) => {
    const [red = 0, green = 0, blue = 0] = [1, 3, 5]
      .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
      .map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4));
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

describe.each(Object.entries(paperColours))('the %s colours', (_name, colours) => {
  it('are told apart: words 4.5 to 1, edges of controls 3 to 1 (WCAG 2.2, 1.4.3 and 1.4.11)', () => {
    for (const words of [colours.ink, colours.soft, colours.chalk]) {
      expect(contrast(words, colours.paper)).toBeGreaterThanOrEqual(4.5);
    }
    expect(contrast(colours.ink, colours.card)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(colours.edge, colours.paper)).toBeGreaterThanOrEqual(3);
    expect(contrast(colours.edge, colours.card)).toBeGreaterThanOrEqual(3);
  });
});
