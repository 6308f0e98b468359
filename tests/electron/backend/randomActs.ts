import fc from 'fast-check';
import type { Backend } from '../../../electron/contract/backend.ts';
import type { Reply } from '../../../electron/contract/reply.ts';
import { turns } from '../../../engine/framing/framing.ts';
import { ask } from './workbench.ts';

const number = fc.nat({ max: 420 });
const criterion = fc.constantFrom('depth', 'eccentricTempo', 'barPath', 'spinePosition');
const exercise = fc.constantFrom('back-squat', 'leg-press', 'front-squat', 'romanian-deadlift');
const severity = fc.constantFrom('keep', 'prefer', 'adjust', 'correct', 'stop');
/** Which of the reps (or clips, or flags) that are there; the rest of a division picks one. */
const pick = fc.nat({ max: 50 });

/** One random thing that a person does in a session. */
export const step = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      do: fc.constant('mark'),
      edge: fc.constantFrom('start', 'stretchedEnd', 'end'),
      frame: number,
      clip: pick,
    }),
  },
  {
    weight: 5,
    arbitrary: fc.record({ do: fc.constant('flag'), criterion, severity, rep: pick, frame: number, clip: pick }),
  },
  {
    weight: 3,
    arbitrary: fc.record({ do: fc.constant('change'), flag: pick, criterion, severity, rep: pick, frame: number }),
  },
  {
    weight: 3,
    arbitrary: fc.record({ do: fc.constant('tick'), criterion, rep: pick, fine: fc.boolean(), clip: pick }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('unmark'), rep: pick, clip: pick }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('unflag'), flag: pick }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('notes'), text: fc.string({ maxLength: 20 }) }) },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant('plan'),
      sets: fc.integer({ min: 1, max: 9 }),
      load: fc.double({ min: 0, max: 1000, noNaN: true }),
      lighter: fc.boolean(),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('equip'), place: fc.constantFrom('home', 'fullGym', null) }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('takeOut'), clip: pick }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('bringBack'), which: pick }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('judgeAs'), exercise, entry: pick }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('clipAs'), exercise, clip: pick }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('shift'), clip: pick, entry: pick, before: pick }) },
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constant('letter'),
      what: fc.constantFrom('edit', 'add', 'leaveOut', 'bringBack', 'remove', 'move'),
      line: pick,
      other: pick,
      words: fc.constantFrom('Mine.', 'Two\n\nlines.'),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant('clip'),
      factor: fc.double({ min: 0.01, max: 100, noNaN: true }),
      clip: pick,
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('frame'),
      clip: pick,
      change: fc.record(
        {
          turnDeg: fc.constantFrom(...turns),
          mirrored: fc.boolean(),
          crop: fc.option(
            fc.record({ leftPx: number, topPx: number, widthPx: fc.constant(64), heightPx: fc.constant(48) }),
          ),
          brightness: fc.double({ min: 0.25, max: 4, noNaN: true }),
        },
        { requiredKeys: [] },
      ),
    }),
  },
  // What is placed on a picture goes along when it is turned.
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant('place'), what: fc.nat({ max: 3 }), x: number, frame: number, clip: pick }),
  },
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant('trim'), from: number, to: number, whole: fc.boolean(), clip: pick }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('split'), frame: number, clip: pick }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('pair'), clip: pick, other: pick, frame: number }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('part'), clip: pick }) },
);
export type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

/** One random thing that concerns two sessions at once, or a session as a whole. */
export const stepBetween = fc.oneof(
  { weight: 4, arbitrary: fc.record({ do: fc.constant('moveClip'), clip: pick }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('moveEntry'), entry: pick }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('mergeEntries'), entry: pick, into: pick }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('removeEntry'), entry: pick }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('removeSession') }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('merge') }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('bringBack'), which: pick }) },
);
export type StepBetween = typeof stepBetween extends fc.Arbitrary<infer T> ? T : never;

/** Being refused is part of the game; breaking is not. */
async function settle(asked: Promise<Reply<unknown>>): Promise<void> {
  const reply = await asked;
  if (!reply.ok && reply.problem.code === 'internal') throw new Error('A request broke.');
}

/** Changes a line of the letter, or one that is left out, whichever it is. */
async function changeLetter(
  backend: Backend,
  sessionId: string,
  one: Extract<Step, { readonly do: 'letter' }>,
): Promise<Reply<unknown>> {
  const { paragraphs, leftOut } = await ask(backend, 'letters.get', { sessionId });
  const ids = [...paragraphs, ...leftOut].map(({ id }) => id);
  const paragraph = ids[one.line % ids.length] ?? 'none';
  const after = ids[one.other % ids.length] ?? 'none';
  switch (one.what) {
    case 'edit':
      return backend.ask('letters.edit', { sessionId, paragraph, words: one.words });
    case 'add':
      return backend.ask('letters.add', { sessionId, after });
    case 'move':
      return backend.ask('letters.move', { sessionId, paragraph, after: one.other === 0 ? null : after });
    case 'leaveOut':
      return backend.ask('letters.leaveOut', { sessionId, paragraph });
    case 'bringBack':
      return backend.ask('letters.bringBack', { sessionId, paragraph });
    case 'remove':
      return backend.ask('letters.remove', { sessionId, paragraph });
  }
}

/** Draws, covers or points something out on a clip's picture. */
function place(
  backend: Backend,
  clipId: string,
  { what, x, frame }: Extract<Step, { readonly do: 'place' }>,
): Promise<Reply<unknown>> {
  const [a, b] = [
    { x, y: 20 },
    { x: x + 30, y: 60 },
  ];
  if (what === 0)
    return backend.ask('drawings.add', { clipId, frame, drawn: { shape: 'plumb', points: [a, { ...a, y: 90 }] } });
  if (what === 1) return backend.ask('drawings.add', { clipId, frame, drawn: { shape: 'circle', points: [a, b] } });
  if (what === 2) {
    const box = { leftPx: x, topPx: 20, widthPx: 30, heightPx: 40 };
    return backend.ask('covers.add', { clipId, cover: { kind: 'box', place: { frame, box } } });
  }
  const knownLength = { from: { xPx: a.x, yPx: a.y }, to: { xPx: b.x, yPx: b.y }, lengthM: 0.5 };
  return backend.ask('measures.setUp', { clipId, change: { facing: 'left', knownLength } });
}

/** Does one step on whatever is there; refused steps are part of the game. */
export async function take(backend: Backend, sessionId: string, one: Step): Promise<void> {
  const reply = await backend.ask('review.get', { sessionId });
  // It may lie in the bin, or hold nothing any more.
  if (!reply.ok) return;
  const { review } = reply.value;
  const [entry] = review.entries;
  if (!entry) return;
  const clips = review.entries.flatMap((each) => each.clips);
  const clip = 'clip' in one ? clips[one.clip % Math.max(1, clips.length)] : clips[0];
  const clipId = clip?.id ?? 'none';
  const reps = (n: number) => (n % 3 === 0 ? ('set' as const) : [(n % Math.max(1, clip?.reps.length ?? 0)) + 1]);
  const flagId = 'flag' in one ? (entry.flags[one.flag % Math.max(1, entry.flags.length)]?.id ?? 'none') : 'none';
  switch (one.do) {
    case 'mark':
      return settle(backend.ask('reps.mark', { clipId, edge: one.edge, frame: one.frame }));
    case 'unmark':
      return settle(backend.ask('reps.remove', { clipId, rep: (one.rep % 4) + 1 }));
    case 'flag': {
      const { criterion, severity, frame } = one;
      return settle(backend.ask('flags.add', { clipId, criterion, severity, frame, reps: reps(one.rep) }));
    }
    case 'change': {
      const { criterion, severity, frame } = one;
      const change = { criterion, severity, frame, reps: reps(one.rep) };
      return settle(backend.ask('flags.update', { flagId, change }));
    }
    case 'unflag':
      return settle(backend.ask('flags.remove', { flagId }));
    case 'tick': {
      const { criterion, fine } = one;
      return settle(backend.ask('ticks.set', { clipId, criterion, fine, reps: reps(one.rep) }));
    }
    case 'notes':
      return settle(backend.ask('sessions.update', { sessionId, notes: one.text }));
    case 'plan':
      return settle(
        backend.ask('entries.update', {
          entryId: entry.id,
          plan: one.lighter
            ? { sets: [{ reps: 5, loadKg: one.load }, { reps: 8 + one.sets }] }
            : { sets: one.sets, reps: 5, loadKg: one.load },
        }),
      );
    case 'equip':
      return settle(backend.ask('sessions.update', { sessionId, equipment: one.place }));
    case 'clip':
      return settle(backend.ask('clips.update', { clipId, change: { realTimeFactor: one.factor } }));
    case 'frame':
      return settle(backend.ask('clips.frame', { clipId, change: one.change }));
    case 'place':
      return settle(place(backend, clipId, one));
    case 'trim': {
      const section = one.whole
        ? null
        : { firstFrame: Math.min(one.from, one.to), lastFrame: Math.max(one.from, one.to) };
      return settle(backend.ask('clips.trim', { clipId, section }));
    }
    case 'split':
      return settle(backend.ask('clips.split', { clipId, cuts: [one.frame] }));
    case 'pair': {
      const other = clips[one.other % Math.max(1, clips.length)]?.id ?? 'none';
      const by = { how: 'frames', leadFrame: one.frame, frame: one.frame } as const;
      return settle(backend.ask('cameras.pair', { leadId: clipId, clipId: other, by }));
    }
    case 'part':
      return settle(backend.ask('cameras.part', { clipId }));
    case 'letter':
      return settle(changeLetter(backend, sessionId, one));
    case 'takeOut':
      return settle(backend.ask('clips.remove', { clipId }));
    case 'bringBack':
      return bringBack(backend, one.which);
    case 'judgeAs': {
      const { id } = review.entries[one.entry % review.entries.length] ?? entry;
      return settle(backend.ask('entries.update', { entryId: id, exercise: one.exercise }));
    }
    case 'clipAs':
      return settle(backend.ask('clips.move', { clipId, to: { kind: 'exercise', exercise: one.exercise } }));
    case 'shift': {
      const into = review.entries[one.entry % review.entries.length] ?? entry;
      const before = into.clips[one.before % (into.clips.length + 1)]?.id ?? null;
      return settle(backend.ask('clips.move', { clipId, to: { kind: 'entry', entryId: into.id, before } }));
    }
  }
}

async function bringBack(backend: Backend, which: number): Promise<void> {
  const binned = await ask(backend, 'bin.list', {});
  const item = binned[which % Math.max(1, binned.length)];
  if (item) return settle(backend.ask('bin.restore', { kind: item.kind, id: item.id }));
}

/** Does one step that concerns a session and another one, on whatever is there. */
export async function takeBetween(
  backend: Backend,
  [sessionId, otherId]: readonly [string, string],
  one: StepBetween,
): Promise<void> {
  const reply = await backend.ask('review.get', { sessionId });
  const entries = reply.ok ? reply.value.review.entries : [];
  const clips = entries.flatMap((each) => each.clips);
  const clipId = ('clip' in one ? clips[one.clip % Math.max(1, clips.length)]?.id : undefined) ?? 'none';
  const entryId = ('entry' in one ? entries[one.entry % Math.max(1, entries.length)]?.id : undefined) ?? 'none';
  switch (one.do) {
    case 'moveClip':
      return settle(backend.ask('clips.move', { clipId, to: { kind: 'session', sessionId: otherId } }));
    case 'moveEntry':
      return settle(backend.ask('entries.move', { entryId, sessionId: otherId }));
    case 'mergeEntries': {
      const into = entries[one.into % Math.max(1, entries.length)]?.id ?? 'none';
      return settle(backend.ask('entries.merge', { entryId, into }));
    }
    case 'removeEntry':
      return settle(backend.ask('entries.remove', { entryId }));
    case 'removeSession':
      return settle(backend.ask('sessions.remove', { sessionId }));
    case 'merge':
      return settle(backend.ask('sessions.merge', { sessionId, into: otherId }));
    case 'bringBack':
      return bringBack(backend, one.which);
  }
}
