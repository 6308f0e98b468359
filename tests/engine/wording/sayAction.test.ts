import { describe, expect, it } from 'vitest';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { sayAction } from '../../../engine/wording/sayAction.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';

const english = shippedUnder(3);
const german = translated(english, 'de');
const flag = { kind: 'flag', exercise: 'back-squat', criterion: 'depth', fault: 'shortOfDepth' };

describe('the name of an action', () => {
  it('names exercise and fault as the judging data does, and counts reps', () => {
    const fault = english.exercises
      .find(({ id }) => id === 'back-squat')
      ?.faults.find(({ id }) => id === 'shortOfDepth');
    const name = { id: 'flagAdded', values: { ...flag, reps: [2] } };
    expect(sayAction(name, 'en', english)).toBe(`Flag: ${fault?.name}, rep 2`);
    expect(sayAction({ id: 'flagRemoved', values: { ...flag, reps: [1, 2] } }, 'en', english)).toBe(
      `Flag removed: ${fault?.name}, reps 1 and 2`,
    );
  });

  it('is about the criterion where no fault was named, and about the whole set where no rep was', () => {
    const values = { ...flag, kind: 'praise', fault: '', reps: [] };
    expect(sayAction({ id: 'flagAdded', values }, 'en', english)).toMatch(/^Praise: \w.+, whole set$/);
    expect(sayAction({ id: 'ticked', values }, 'de', german)).toMatch(/^Haken: .+, ganzer Satz$/);
  });

  it('speaks German with the German names', () => {
    const name = german.exercises.find(({ id }) => id === 'deadlift')?.name;
    expect(sayAction({ id: 'exerciseAdded', values: { exercise: 'deadlift' } }, 'de', german)).toBe(
      `Übung hinzugefügt: ${name}`,
    );
    expect(sayAction({ id: 'sessionChanged', values: { parts: ['title', 'pain_note'] } }, 'de', german)).toBe(
      'Einheit: Titel und Notiz zu Schmerzen',
    );
  });

  it('says what a suggestion said, in either language', () => {
    const values = { rep: 1, value: 0.2, within: 0.1, asked: 'planNone', where: 'bottom', alsoCount: 0, alsoReps: [] };
    const dismissed = { id: 'suggestionDismissed', values: { ...values, said: 'pauseTime' } };
    expect(sayAction(dismissed, 'en', english)).toMatch(/^Suggestion dismissed: Rep 1 pauses for 0\.2 s ± 0\.1 s/);
    expect(sayAction(dismissed, 'de', german)).toMatch(/^Vorschlag verworfen: Wiederholung 1/);
  });

  it('is what was stored where it was stored as words, and holds ids where the judging data is not known yet', () => {
    expect(sayAction({ id: 'asWritten', values: { sentence: 'Flag: Depth, rep 2' } }, 'de', german)).toBe(
      'Flag: Depth, rep 2',
    );
    expect(sayAction({ id: 'exerciseAdded', values: { exercise: 'deadlift' } }, 'en', null)).toBe(
      'Exercise added: deadlift',
    );
  });
});
