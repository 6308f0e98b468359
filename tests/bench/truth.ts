import path from 'node:path';
import { parseArgs } from 'node:util';
import { findMediaTools } from '../../electron/backend/media/tools/mediaTools.ts';
import { rootFolder } from '../../electron/launch/folders.ts';
import type { Bench, Figure } from './bench.ts';
import { heading, lineOf, repLines, totalsLine } from './truth/lines.ts';
import { markdownTable } from './truth/markdown.ts';
import { type MeasuredTrueClip, measureTrueClip } from './truth/measureTrueClip.ts';
import { type Totals, totalsOf } from './truth/totals.ts';
import { type TrueClip, trueClipsIn } from './truth/trueClips.ts';

const footage = ['tests/footage', 'tests/footage/real', 'seeds/footage'].map((folder) => path.join(rootFolder, folder));

/**
 * What measuring tells of every clip whose truth is known. Options: `--clip PART` only clips with this in their name, with
 * each rep; `--folder FOLDER` clips with truth files elsewhere; `--cached` only what is recorded already (a star: by older code); `--again` looks at
 * the clips again; `--json` prints everything as JSON, `--markdown` the README's table.
 */
export const truth: Bench = {
  name: 'truth',
  about:
    'clips whose truth is known; errors as median/nine of ten/most (--clip PART, --folder F, --cached, --again, --json, --markdown)',
  run: async (options) => {
    const { values } = parseArgs({
      args: [...options],
      options: {
        clip: { type: 'string', multiple: true, default: [] },
        folder: { type: 'string' },
        cached: { type: 'boolean', default: false },
        again: { type: 'boolean', default: false },
        json: { type: 'boolean', default: false },
        markdown: { type: 'boolean', default: false },
      },
    });
    const clips = trueClipsIn(values.folder === undefined ? footage : [path.resolve(values.folder)]).filter(
      ({ name }) => values.clip.length === 0 || values.clip.some((part) => name.includes(part)),
    );
    const tools = await findMediaTools();
    const how = { tools, look: values.again ? 'again' : values.cached ? 'keptAlone' : 'ifNeeded' } as const;
    const measured: MeasuredTrueClip[] = [];
    if (!values.json) say(heading);
    for (const clip of clips) {
      const one = await measureTrueClip(clip, how);
      if (one) measured.push(one);
      if (!values.json) tell(clip, one, values.clip.length > 0);
    }
    if (values.json) {
      say(JSON.stringify(measured.map(asJson), null, 1));
      return [];
    }
    if (values.markdown) for (const line of markdownTable(measured)) say(line);
    return totals(measured);
  },
};

const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

function tell(clip: TrueClip, measured: MeasuredTrueClip | null, eachRep: boolean): void {
  if (measured === null) return say(`${clip.name}: not recorded yet`);
  say(lineOf(measured));
  if (eachRep) for (const line of repLines(measured)) say(line);
}

function asJson({ clip, measurement, compared }: MeasuredTrueClip) {
  const { curves: _, ...rest } = measurement;
  return { clip, totals: totalsOf([compared]), compared, measurement: rest };
}

/** The goals that measuring is held to. */
function totals(measured: readonly MeasuredTrueClip[]): Figure[] {
  const of = (kind: TrueClip['kind']) => measured.filter(({ clip }) => clip.kind === kind);
  const figures = (['rendered', 'filmed'] as const).flatMap((kind) => {
    const clips = of(kind);
    if (clips.length === 0) return [];
    const all = totalsOf(clips.map(({ compared }) => compared));
    say(totalsLine(`all ${kind}`, all));
    const wrong = clips.filter(({ compared }) => compared.missed.length + compared.invented.length > 0).length;
    const goal = kind === 'filmed' ? 2 / 17 : 0;
    return [
      { what: `${kind}: clips with a wrong count / clips`, ratio: wrong / clips.length, goal },
      { what: `${kind}: invented reps / reps`, ratio: all.invented / Math.max(1, all.expected), goal: 0 },
      ...(kind === 'filmed' ? filmedFigures(all) : renderedFigures(all)),
    ];
  });
  return figures.filter(({ ratio }) => !Number.isNaN(ratio));
}

function filmedFigures({ edges }: Totals): Figure[] {
  return [
    { what: 'filmed: start, turn, end, median error / 0.10 s', ratio: edges.all.median / 0.1, goal: 1 },
    { what: 'filmed: start, turn, end, nine of ten / 0.25 s', ratio: edges.all.p90 / 0.25, goal: 1 },
  ];
}

function renderedFigures({ phases, range, cover }: Totals): Figure[] {
  return [
    { what: 'rendered: phases, median error / 0.03 s', ratio: phases.median / 0.03, goal: 1 },
    { what: 'rendered: phases, nine of ten / 0.12 s', ratio: phases.p90 / 0.12, goal: 1 },
    { what: 'rendered: range, median error / 2.5 %', ratio: range.median / 2.5, goal: 1 },
    { what: 'rendered: numbers beyond their half-width / numbers', ratio: 1 - (cover ?? 1), goal: 0.1 },
  ];
}
