import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import type { Suggestion } from '../../../../engine/motion/suggestion.ts';
import { sayMeasuring } from '../../../../engine/wording/sayMeasuring.ts';
import { squatTruth } from '../measure/knownRecording.ts';
import { measuredLibrary } from '../measure/measuredLibrary.ts';
import { ask, dump, jobEnd, refusal, squatFile } from '../workbench.ts';

const idsOf = (suggestions: readonly Suggestion[]) => suggestions.map(({ id }) => id);

/** The squat clip, measured; its eccentrics of 1.2 to 2.2 s without much of a pause give something to propose. */
async function proposals() {
  const library = await measuredLibrary();
  const { suggestions } = await ask(library.backend, 'measures.get', { clipId: library.clipId });
  const [first] = suggestions;
  if (!first) throw new Error('Nothing is proposed.');
  return { ...library, suggestions, first };
}

const flagsOf = async (backend: Backend, sessionId: string) =>
  (await ask(backend, 'review.get', { sessionId })).review.entries[0]?.flags ?? [];

/** The frame of the squat clip nearest to a media time. */
const nearest = (seconds: number) =>
  squatTruth.pts.reduce(
    (best, at, frame) => (Math.abs(at - seconds) < Math.abs((squatTruth.pts[best] ?? 0) - seconds) ? frame : best),
    0,
  );

it('becomes a flag at its frame, with its sentence as the note, and is proposed no more', async () => {
  const { backend, folder, sessionId, clipId, suggestions, first } = await proposals();
  const before = dump(folder);
  const { flagId } = await ask(backend, 'suggestions.accept', { clipId, suggestionId: first.id });
  expect(await flagsOf(backend, sessionId)).toMatchObject([
    {
      id: flagId,
      criterion: first.criterion,
      fault: first.fault,
      severity: first.severity,
      reps: first.reps,
      at: { frame: nearest(first.atS) },
      note: sayMeasuring(first.message, 'en'),
    },
  ]);
  const left = await ask(backend, 'measures.get', { clipId });
  expect(idsOf(left.suggestions)).toEqual(idsOf(suggestions.slice(1)));
  expect(left.dismissed).toEqual([]);
  expect((await refusal(backend, 'suggestions.accept', { clipId, suggestionId: first.id })).code).toBe('not-found');

  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
  expect(idsOf((await ask(backend, 'measures.get', { clipId })).suggestions)).toEqual(idsOf(suggestions));
});

it('is changed as it is accepted, and stays answered although it says something else', async () => {
  const { backend, sessionId, clipId, first } = await proposals();
  const change = { severity: 'prefer', reps: [first.reps[0] ?? 1], note: 'A little slower.' } as const;
  await ask(backend, 'suggestions.accept', {
    clipId,
    suggestionId: first.id,
    change: { ...change, reps: [...change.reps] },
  });
  expect(await flagsOf(backend, sessionId)).toMatchObject([change]);
  const { suggestions } = await ask(backend, 'measures.get', { clipId });
  expect(idsOf(suggestions)).not.toContain(first.id);
});

it('comes back when its flag is removed', async () => {
  const { backend, clipId, suggestions, first } = await proposals();
  const { flagId } = await ask(backend, 'suggestions.accept', { clipId, suggestionId: first.id });
  await ask(backend, 'flags.remove', { flagId });
  expect(idsOf((await ask(backend, 'measures.get', { clipId })).suggestions)).toEqual(idsOf(suggestions));
});

it('is not proposed where a flag says the same of all its reps', async () => {
  const { backend, clipId, first } = await proposals();
  const { criterion, fault, severity } = first;
  const flag = { clipId, criterion, fault, severity, frame: 40 };
  await ask(backend, 'flags.add', { ...flag, reps: [...first.reps] });
  expect(idsOf((await ask(backend, 'measures.get', { clipId })).suggestions)).not.toContain(first.id);
});

it('is put aside when dismissed, and can be brought back or accepted from there', async () => {
  const { backend, folder, sessionId, clipId, suggestions, first } = await proposals();
  const before = dump(folder);
  const said = { clipId, suggestionId: first.id };
  await ask(backend, 'suggestions.dismiss', { ...said, dismissed: true });
  const after = await ask(backend, 'measures.get', { clipId });
  expect(idsOf(after.suggestions)).toEqual(idsOf(suggestions.slice(1)));
  expect(idsOf(after.dismissed)).toEqual([first.id]);
  expect((await refusal(backend, 'suggestions.dismiss', { ...said, dismissed: true })).code).toBe('not-found');

  await ask(backend, 'suggestions.dismiss', { ...said, dismissed: false });
  expect(idsOf((await ask(backend, 'measures.get', { clipId })).suggestions)).toEqual(idsOf(suggestions));
  expect(dump(folder)).toBe(before);

  await ask(backend, 'suggestions.dismiss', { ...said, dismissed: true });
  await ask(backend, 'suggestions.accept', said);
  expect((await ask(backend, 'measures.get', { clipId })).dismissed).toEqual([]);
  expect(await flagsOf(backend, sessionId)).toHaveLength(1);
});

it('asks for the measured reps when one that it names is not among the clip’s', async () => {
  const { backend, folder, clipId, first } = await proposals();
  for (let rep = 3; rep >= 1; rep -= 1) await ask(backend, 'reps.remove', { clipId, rep });
  const before = dump(folder);
  expect(await refusal(backend, 'suggestions.accept', { clipId, suggestionId: first.id })).toMatchObject({
    code: 'conflict',
    sentence: expect.stringMatching(/use the measured reps first/),
  });
  expect(dump(folder)).toBe(before);
});

it('is not known to a second look, which is set up the same and finds the same', async () => {
  const { backend, sessionId, clipId, suggestions, first } = await proposals();
  await ask(backend, 'measures.setUp', { clipId, change: { facing: 'right' } });
  await ask(backend, 'suggestions.accept', { clipId, suggestionId: first.id });
  const { sessionId: second } = await ask(backend, 'secondLook.start', { sessionId });
  const { review } = await ask(backend, 'review.get', { sessionId: second });
  const lookedAt = review.entries[0]?.clips[0]?.id ?? '';
  const measures = await ask(backend, 'measures.get', { clipId: lookedAt });
  expect(measures.setUp.facing).toBe('right');
  expect(measures.measurement?.reps).toHaveLength(3);
  expect(idsOf(measures.suggestions)).toContain(first.id);
  expect(suggestions.length).toBeGreaterThan(0);
});

it('is a note in the language of the sheet until the coach writes a note of their own', async () => {
  const { backend, folder, sessionId, clipId, first } = await proposals();
  const { flagId } = await ask(backend, 'suggestions.accept', { clipId, suggestionId: first.id });
  await ask(backend, 'letters.style', { sessionId, style: { language: 'de' } });
  const sheet = async () => {
    const file = path.join(folder, 'sheet.txt');
    await ask(backend, 'documents.write', { sessionId, document: 'sheet', format: 'csv', path: file });
    return readFileSync(file, 'utf8');
  };
  const [english, german] = [sayMeasuring(first.message, 'en'), sayMeasuring(first.message, 'de')];
  expect(await sheet()).toContain(german);
  expect(await sheet()).not.toContain(english);

  await ask(backend, 'flags.update', { flagId, change: { note: english } });
  expect(await sheet()).toContain(german);
  await ask(backend, 'flags.update', { flagId, change: { note: 'Langsamer ablassen.' } });
  expect(await sheet()).toContain('Langsamer ablassen.');
  expect(await sheet()).not.toContain(german);
  await ask(backend, 'history.undo', { sessionId });
  expect(await sheet()).toContain(german);
});

/** What is said as "about" of a clip: the ids of its suggestions. */
const saidAsAbout = async (backend: Backend, clipId: string) =>
  idsOf(
    (await ask(backend, 'measures.get', { clipId })).suggestions.filter(
      ({ message }) => message.values.about === 'yes',
    ),
  );

it('is said as about where it was dismissed on another clip of the exercise, until it is brought back there', async () => {
  const { backend, traineeId, clipId, first } = await proposals();
  const { sessionId } = await ask(backend, 'sessions.add', { traineeId, title: 'Legs', date: '2026-03-11' });
  const { entryId } = await ask(backend, 'entries.add', { sessionId, exercise: 'back-squat' });
  const { jobIds } = await ask(backend, 'clips.import', { sessionId, entryId, view: 'side', paths: [squatFile] });
  const other = (await jobEnd(backend, jobIds[0] ?? '')).clipId ?? '';
  expect(await saidAsAbout(backend, other)).toEqual([]);
  const said = { clipId, suggestionId: first.id };
  await ask(backend, 'suggestions.dismiss', { ...said, dismissed: true });
  expect(await saidAsAbout(backend, clipId)).toEqual([]);
  expect(await saidAsAbout(backend, other)).toEqual([first.id]);
  await ask(backend, 'suggestions.dismiss', { ...said, dismissed: false });
  expect(await saidAsAbout(backend, other)).toEqual([]);

  await ask(backend, 'suggestions.dismiss', { ...said, dismissed: true });
  await ask(backend, 'measures.markReps', { clipId: other });
  await ask(backend, 'suggestions.accept', { clipId: other, suggestionId: first.id });
  const notes = (await flagsOf(backend, sessionId)).map(({ note }) => note);
  expect(notes).toEqual([expect.stringContaining(' about ')]);
});

it('is said as about where an edge that a person set leaves its ±', async () => {
  const { backend, clipId, suggestions } = await proposals();
  const slow = suggestions.find(({ message }) => message.id === 'eccentricTime');
  if (!slow) throw new Error('No eccentric is too quick.');
  const rep = slow.reps[0] ?? 1;
  const [startS, endS] = squatTruth.reps[rep - 1]?.phases_s.eccentric ?? [0, 0];
  const frame = nearest(startS + (endS - startS) / 4);
  await ask(backend, 'reps.moveEdge', { clipId, rep, edge: 'start', frame });
  expect(await saidAsAbout(backend, clipId)).toContain(slow.id);
});

it('stays dismissed in each part of a clip that is split, and is brought back in one of them alone', async () => {
  const { backend, folder, sessionId, clipId, first } = await proposals();
  await ask(backend, 'suggestions.dismiss', { clipId, suggestionId: first.id, dismissed: true });
  const before = dump(folder);
  // Half-way between the first rep's end and the second's start.
  const [one, two] = squatTruth.reps;
  const cut = nearest(((one?.phases_s.concentric[1] ?? 0) + (two?.phases_s.eccentric[0] ?? 0)) / 2);
  const { clipIds } = await ask(backend, 'clips.split', { clipId, cuts: [cut] });
  const answersOf = async (id: string) => {
    const { suggestions, dismissed } = await ask(backend, 'measures.get', { clipId: id });
    return { open: idsOf(suggestions).includes(first.id), dismissed: idsOf(dismissed).includes(first.id) };
  };
  const parts = await Promise.all(clipIds.map(answersOf));
  expect(parts.some(({ open }) => open)).toBe(false);
  expect(parts.at(-1)).toEqual({ open: false, dismissed: true });
  const [, other = ''] = clipIds;
  await ask(backend, 'suggestions.dismiss', { clipId: other, suggestionId: first.id, dismissed: false });
  expect(await answersOf(other)).toEqual({ open: true, dismissed: false });
  expect(await answersOf(clipId)).toEqual(parts[0]);
  await ask(backend, 'history.undo', { sessionId });
  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
});
