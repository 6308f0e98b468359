import fc from 'fast-check';
import type { Backend } from '../../../electron/contract/backend.ts';
import type { Reply } from '../../../electron/contract/reply.ts';
import { ask } from './workbench.ts';

const number = fc.nat({ max: 420 });
const criterion = fc.constantFrom('depth', 'eccentricTempo', 'barPath', 'spinePosition');
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
);
export type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

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

/** Does one step on whatever is there; refused steps are part of the game. */
export async function take(backend: Backend, sessionId: string, one: Step): Promise<void> {
  const { review } = await ask(backend, 'review.get', { sessionId });
  const [entry] = review.entries;
  if (!entry) throw new Error('The session lost its entry.');
  const clip = 'clip' in one ? entry.clips[one.clip % Math.max(1, entry.clips.length)] : entry.clips[0];
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
    case 'letter':
      return settle(changeLetter(backend, sessionId, one));
    case 'takeOut':
      return settle(backend.ask('clips.remove', { clipId }));
  }
}
