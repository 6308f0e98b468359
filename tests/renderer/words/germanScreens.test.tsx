// @vitest-environment happy-dom
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { DeskScreen } from '../../../renderer/desk/DeskScreen.tsx';
import { FirstStartScreen } from '../../../renderer/firstStart/FirstStartScreen.tsx';
import { HandoverScreen } from '../../../renderer/handover/HandoverScreen.tsx';
import { ImportDialog } from '../../../renderer/importing/ImportDialog.tsx';
import { LetterHead } from '../../../renderer/letter/LetterHead.tsx';
import { letterContext } from '../../../renderer/letter/letterContext.ts';
import { SentLetters } from '../../../renderer/letter/SentLetters.tsx';
import { HistoryPanel } from '../../../renderer/shared/HistoryPanel.tsx';
import { StatusLine } from '../../../renderer/shared/StatusLine.tsx';
import { catalogueState } from '../../../renderer/state/catalogueState.ts';
import { deskState } from '../../../renderer/state/deskState.ts';
import { handoverState } from '../../../renderer/state/handoverState.ts';
import type { Letter } from '../../../renderer/state/letterState.ts';
import { libraryState } from '../../../renderer/state/libraryState.ts';
import { reviewState, reviewWithFlagIds } from '../../../renderer/state/reviewState.ts';
import { TraineeScreen } from '../../../renderer/trainee/TraineeScreen.tsx';
import { deskLanguage } from '../../../renderer/words/deskLanguage.ts';
import { deskVoice } from '../../../renderer/words/deskVoice.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';
import { changed, fakeRackside } from '../harness/fakeRackside.ts';
import { reviewAnswer } from '../harness/reviewAnswer.ts';
import { startAfresh } from '../harness/startAfresh.ts';
import { summaryOf, traineeOf } from '../harness/summaries.ts';

const wording = path.resolve(import.meta.dirname, '../../../engine/wording');

/** Texts without values that differ between the languages, as the English desk says them. */
const englishTexts = new Set<string>();

beforeAll(async () => {
  for (const file of readdirSync(path.join(wording, 'english/desk'))) {
    const [english, german]: Record<string, Record<string, string>>[] = await Promise.all(
      ['english', 'german'].map((language) => import(path.join(wording, language, 'desk', file))),
    );
    for (const [topic, texts] of Object.entries(english ?? {})) {
      for (const [id, text] of Object.entries(texts)) if (german?.[topic]?.[id] !== text) englishTexts.add(text);
    }
  }
  // These are German words too, said under other ids.
  for (const text of ['Name', 'Note', 'Import', 'Start', 'Clips', 'Text', 'Version']) englishTexts.delete(text);
});

/** Everything on the page that people read or hear. */
function said(): string[] {
  const texts = [...document.querySelectorAll('*')].flatMap((element) => [
    ...[...element.childNodes].filter((node) => node.nodeType === 3).map((node) => node.textContent?.trim() ?? ''),
    ...['aria-label', 'title', 'placeholder', 'alt'].map((name) => element.getAttribute(name) ?? ''),
  ]);
  return texts.filter((text) => text !== '');
}

const inEnglish = (): string[] => said().filter((text) => englishTexts.has(text));

const sessions = [summaryOf({ coverage: 0.5, provisional: true, byHand: true }), summaryOf({ id: 's2', mark: '' })];

const letter: Letter = {
  style: { length: 'full', tone: 'plain', language: 'de' },
  paragraphs: [],
  waiting: [],
  leftOut: [],
  name: 'Mira',
  sentAlready: true,
  sent: [{ version: 1, sentAt: '2026-03-04T12:00:00Z', rubricVersion: 1, mark: 'B+', sha256: '' }],
};

beforeEach(() => {
  startAfresh(catalogueState);
  startAfresh(deskState);
  startAfresh(handoverState);
  startAfresh(reviewState);
  startAfresh(libraryState);
  deskLanguage.getState().choose('de');
  libraryState.setState({ library: { kind: 'open', folder: '', voice: 'coach', coach: 'Jo Harwick' } });
  deskState.setState({ loaded: true, sessions, trainees: [traineeOf({ minor: true, equipment: 'park' })] });
});

afterEach(() => {
  startAfresh(deskLanguage);
  startAfresh(deskVoice);
});

const answers = {
  'desk.sessions': () => ({ sessions, next: null }),
  'desk.trainees': () => [traineeOf({ minor: true, equipment: 'park' as const })],
  'jobs.list': () => [],
  'trainees.speeds': () => [],
  'catalogue.get': () => ({
    rubric: shipped.rubric,
    exercises: [...shipped.exercises],
    cautions: [...shipped.cautions],
    translations: [],
    rubricVersions: [1],
  }),
};

describe('a desk that speaks German', () => {
  it('says so on the first start, where another language can be chosen', async () => {
    const page = fakeRackside({}, { 'language.keep': () => changed });
    render(<FirstStartScreen demoJobId={null} onDemoJob={() => {}} />);
    expect(screen.getByRole('radio', { name: /^Ein Coach/ })).toBeTruthy();
    expect(screen.getByRole('textbox', { name: 'Name unter deinen Briefen' })).toBeTruthy();
    expect(inEnglish()).toEqual([]);
    await userEvent.setup().selectOptions(screen.getByRole('combobox', { name: 'Sprache' }), 'English');
    expect(deskLanguage.getState().language).toBe('en');
    expect(page.askedFor('language.keep')).toEqual([{ language: 'en' }]);
  });

  it('lists its sessions with German days, shares and states', async () => {
    fakeRackside(answers);
    render(<DeskScreen />);
    const row = await screen.findByRole('row', { name: /B\+ vorläufig von Hand gesetzt/ });
    expect(row.textContent).toContain('4. März 2026');
    expect(row.textContent).toContain('50\u00a0%');
    expect(screen.getByRole('button', { name: 'Einheit anlegen' })).toBeTruthy();
    const user = userEvent.setup();
    await user.click(screen.getByRole('button', { name: 'Einstellungen' }));
    expect(await screen.findByRole('combobox', { name: 'Sprache' })).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Schließen' }));
    await user.click(screen.getByRole('button', { name: 'Athlet anlegen' }));
    expect(screen.getByRole('combobox', { name: 'Ausrüstung' })).toBeTruthy();
    expect(inEnglish()).toEqual([]);
  });

  it('tells the first steps while it is empty', async () => {
    deskState.setState({ sessions: [], trainees: [] });
    fakeRackside({ ...answers, 'desk.sessions': () => ({ sessions: [], next: null }), 'desk.trainees': () => [] });
    render(<DeskScreen />);
    expect(await screen.findByRole('heading', { name: 'Noch nichts zu bewerten' })).toBeTruthy();
    expect(inEnglish()).toEqual([]);
  });

  it('imports clips', async () => {
    fakeRackside({ ...answers, 'review.get': () => reviewAnswer([]) });
    render(<ImportDialog sessionId="s1" entryId={null} paths={['/clips/a.mp4', '/clips/b.mp4']} onClose={() => {}} />);
    expect(screen.getByText('2 Clips: a.mp4, b.mp4')).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Importieren' })).toBeTruthy();
    expect(inEnglish()).toEqual([]);
  });

  it('shows a trainee over time', async () => {
    const points = [{ sessionId: 's1', date: '2026-03-04', title: '', grade: null, criteria: [], changes: [] }];
    fakeRackside({ ...answers, 'trainees.history': () => ({ points, cautions: [], rubricVersion: 1 }) });
    render(<TraineeScreen traineeId="t1" />);
    expect(await screen.findByRole('heading', { name: 'Entwicklung' })).toBeTruthy();
    expect(screen.getByText('Trainingserfahren, Ziel: Kraft, unter 18, Ausrüstung: im Park, mit Stangen')).toBeTruthy();
    expect(inEnglish()).toEqual([]);
  });

  it('heads the letter, lists what was sent, and tells what was done', async () => {
    fakeRackside({ 'history.list': () => [] });
    const answer = reviewAnswer([]);
    const review = reviewWithFlagIds(answer.review);
    const data = { ...answer, review, grade: gradeSession(review, shipped) };
    const save = { current: async () => {} };
    const context = letterContext('s1', save);
    render(
      <>
        <LetterHead context={context} data={data} view={{ kind: 'preview', document: 'letter' }} save={save} />
        <SentLetters context={context} letter={letter} shown={null} onShow={() => {}} />
        <HistoryPanel sessionId="s1" onClose={() => {}} />
      </>,
    );
    expect(screen.getByRole('button', { name: 'So wird gefilmt' })).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Version 1, 4. März 2026, B+' })).toBeTruthy();
    expect(await screen.findByText('Noch nichts geändert.')).toBeTruthy();
    expect(inEnglish()).toEqual([]);
  });

  it('hands over, and says that it is saved', async () => {
    fakeRackside({
      ...answers,
      'handover.sessions': () => ({ sessions: [{ session: summaryOf(), last: null, due: true }], next: null }),
    });
    render(
      <>
        <HandoverScreen sessionIds={null} from={null} />
        <StatusLine onJobs={() => {}} />
      </>,
    );
    expect(await screen.findByRole('button', { name: '1 Einheit übergeben …' })).toBeTruthy();
    expect(screen.getByText('1 Einheit fällig')).toBeTruthy();
    expect(inEnglish()).toEqual([]);
  });
});
