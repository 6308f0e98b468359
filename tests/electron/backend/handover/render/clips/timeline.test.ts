import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outputRate } from '../../../../../../electron/backend/handover/render/clips/composedFrames.ts';
import {
  type AtNotes,
  type ClipPlan,
  layOut,
  pictureUsAt,
  shotCount,
  shotsOf,
  soundPieces,
} from '../../../../../../electron/backend/handover/render/clips/timeline.ts';
import type { FrameTable } from '../../../../../../engine/time/frameTable.ts';
import { noteAt } from '../../shownClip.ts';

const rate = { numerator: 30, denominator: 1 };

const even = (frames: number, spacing = 1_000, denominator = 30_000): FrameTable => ({
  timeBase: { numerator: 1, denominator },
  ticks: Array.from({ length: frames }, (_, frame) => frame * spacing),
  endTicks: frames * spacing,
});

const ways: readonly AtNotes[] = [{ do: 'freeze', lastsS: 1.5 }, { do: 'slow', speed: 0.5 }, { do: 'playOn' }];

/** Frames that appear at 1001/30000 s and the like, and at times without a rate: 15 to 60 ms after each other. */
const broadcast = (numerator: number): FrameTable => even(60, 1001, numerator);
const uneven: FrameTable = {
  timeBase: { numerator: 1, denominator: 1000 },
  ticks: Array.from({ length: 60 }, (_, frame) => 30 * frame + ((frame * 7) % 16)),
  endTicks: 1830,
};
const ratesToShow = [
  ['23.976', broadcast(24_000), { numerator: 24_000, denominator: 1001 }],
  ['25', even(60, 1, 25), { numerator: 25, denominator: 1 }],
  ['29.97', broadcast(30_000), { numerator: 30_000, denominator: 1001 }],
  ['50', even(60, 1, 50), { numerator: 50, denominator: 1 }],
  ['59.94', broadcast(60_000), { numerator: 60_000, denominator: 1001 }],
  ['60', even(60, 1, 60), { numerator: 60, denominator: 1 }],
  ['a changing number of', uneven, { numerator: 48, denominator: 1 }],
] as const;

const planOf = (frames: number, rest: Partial<ClipPlan>): ClipPlan => ({
  ...{ table: even(frames), firstFrame: 0, lastFrame: frames - 1, notes: [], cardS: 0, speed: 1 },
  pictureUs: 1e6 / 30,
  atNotes: { do: 'freeze', lastsS: 1.5 },
  ...rest,
});

describe('a laid-out clip', () => {
  it('shows the card, then every frame once, and stands still at a remark', () => {
    const note = noteAt(4);
    const plan = planOf(6, { notes: [note], cardS: 0.1, atNotes: { do: 'freeze', lastsS: 0.2 } });
    const shots = [...shotsOf(layOut(plan), rate)];
    const frames = shots.map((shot) => (shot.kind === 'card' ? 'card' : shot.frame));
    expect(frames).toEqual(['card', 'card', 'card', 0, 1, 2, 3, 4, 4, 4, 4, 4, 4, 4, 5]);
    const withNote = shots.map((shot) => shot.kind === 'picture' && shot.notes.includes(note));
    expect(withNote.indexOf(true)).toBe(7);
  });

  it('stands still once for each of two remarks at one frame, each with its own words', () => {
    const notes = [noteAt(2, { words: 'one' }), noteAt(2, { words: 'two' })];
    const shots = [...shotsOf(layOut(planOf(3, { notes, atNotes: { do: 'freeze', lastsS: 0.1 } })), rate)];
    const words = shots.map((shot) => (shot.kind === 'picture' ? shot.notes.map((note) => note.words).join() : 'card'));
    expect(words).toEqual(['', '', 'one', 'one', 'one', 'two', 'two', 'two', 'two']);
  });

  it('goes slowly from half a second before to a second after a remark, once where two meet', () => {
    const atNotes: AtNotes = { do: 'slow', speed: 0.25 };
    const one = layOut(planOf(300, { notes: [noteAt(90)], atNotes }));
    expect(one.lastsUs).toBe(10_000_000 + 3 * 1_500_000);
    const meeting = layOut(planOf(300, { notes: [noteAt(90), noteAt(105)], atNotes }));
    expect(meeting.lastsUs).toBe(10_000_000 + 3 * 2_000_000);
    const atEnd = layOut(planOf(300, { notes: [noteAt(299)], atNotes }));
    expect(atEnd.lastsUs).toBe(10_000_000 + 3 * (500_000 + 33_333));
  });

  it.each(ratesToShow)(
    'shows a remark from its own frame on, and before it none: %s frames a second',
    (_, table, rate) => {
      const frames = [0, 7, 8, 31, 31, table.ticks.length - 1];
      for (const cardS of [0, 2]) {
        for (const atNotes of ways) {
          const notes = frames.map((frame) => noteAt(frame));
          const plan = { table, firstFrame: 0, lastFrame: table.ticks.length - 1, notes, cardS, atNotes, speed: 1 };
          const shots = [...shotsOf(layOut({ ...plan, pictureUs: pictureUsAt(rate) }), rate)];
          for (const note of notes) {
            const first = shots.find((shot) => shot.kind === 'picture' && shot.notes.includes(note));
            expect(first).toMatchObject({ frame: note.frame });
          }
        }
      }
    },
  );

  it('lets sound be heard only where it plays as filmed', () => {
    const plan = planOf(90, { notes: [noteAt(30)], cardS: 2 });
    expect(soundPieces(layOut(plan))).toEqual([
      { lastsUs: 2_000_000, fromUs: null },
      { lastsUs: 1_000_000, fromUs: 0 },
      { lastsUs: 1_500_000, fromUs: null },
      { lastsUs: 2_000_000, fromUs: 1_000_000 },
    ]);
  });

  it('never goes back, leaves no frame out at its own rate, and lasts as long as its parts', () => {
    const plans = fc.record({
      frames: fc.integer({ min: 2, max: 120 }),
      at: fc.array(fc.nat(119), { maxLength: 8 }),
      cardS: fc.constantFrom(0, 2),
      freezeS: fc.constantFrom(0.5, 1, 1.5),
    });
    fc.assert(
      fc.property(plans, ({ frames, at, cardS, freezeS }) => {
        const notes = at.filter((frame) => frame < frames).map((frame) => noteAt(frame));
        const timeline = layOut(planOf(frames, { notes, cardS, atNotes: { do: 'freeze', lastsS: freezeS } }));
        expect(timeline.lastsUs).toBe(Math.round((frames * 1e6) / 30) + 1e6 * (cardS + freezeS * notes.length));
        const shots = [...shotsOf(timeline, rate)];
        expect(shots).toHaveLength(shotCount(timeline, rate));
        const shown = shots.flatMap((shot) => (shot.kind === 'picture' ? [shot.frame] : []));
        expect([...shown].sort((one, other) => one - other)).toEqual(shown);
        expect([...new Set(shown)]).toEqual(Array.from({ length: frames }, (_, frame) => frame));
      }),
    );
  });
});

describe('the rate a clip is written at', () => {
  it.each([
    ['30', even(300), 30],
    ['29.97 in ticks of 1/15360', { ...even(300, 512.5, 15_360), ticks: ticksAt(300, 512.512, 1) }, 30_000 / 1_001],
    ['25', even(100, 512, 12_800), 25],
    ['60', even(100, 1, 60), 60],
    ['240', even(100, 1, 240), 60],
    ['10', even(100, 1, 10), 24],
    ['a changing one of 28.7 on average', even(100, 1, 28.7), 30],
  ])('is for %s frames a second', (_name, table, expected) => {
    const { numerator, denominator } = outputRate(table);
    expect(numerator / denominator).toBeCloseTo(expected, 6);
  });
});

function ticksAt(count: number, spacing: number, from: number): number[] {
  return Array.from({ length: count }, (_, frame) => from + Math.round(frame * spacing));
}
