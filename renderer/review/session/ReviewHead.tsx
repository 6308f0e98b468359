import { ArrowLeft, CalendarClock, FileText, History, Keyboard, NotebookPen, Redo2, Undo2 } from 'lucide-react';
import { useState } from 'react';
import type { HistoryState } from '../../../electron/contract/shapes.ts';
import type { Message } from '../../../engine/message/message.ts';
import type { Review } from '../../../engine/review/review.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { EquipmentField, wordsOfEquipment } from '../../base/EquipmentField.tsx';
import { Field } from '../../base/fields.tsx';
import { day } from '../../base/figures.ts';
import { mutate } from '../../bridge/mutate.ts';
import { type CommandPanel, history as historyCommand, keySheet } from '../../commands/everywhereCommands.ts';
import { nextToDo } from '../../commands/nightCommands.ts';
import { letter, redo, undo } from '../../commands/sessionCommands.ts';
import { sayActionName } from '../../shared/sayActionName.ts';
import { sayReviewHead } from '../../words/sayReviewHead.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';

type ReviewHeadProps = {
  readonly review: Review;
  readonly history: HistoryState;
  /** A second look has no letter. */
  readonly secondLook: boolean;
  readonly onDesk: () => void;
  /** Without it the session's own words stay as they are. */
  readonly onSession?: () => void;
  readonly onPanel: (panel: CommandPanel) => void;
};

/** Whose session it is, the way back, and the commands that concern it as a whole. */
export function ReviewHead({ review, history, secondLook, onDesk, onSession, onPanel }: ReviewHeadProps) {
  const { title, date, equipment } = review.session;
  const titled = title === '' ? day(date) : sayReviewHead('titleAndDate', { title, date: day(date) });
  const session =
    equipment === undefined
      ? titled
      : sayReviewHead('atHand', { session: titled, equipment: wordsOfEquipment(equipment) });
  return (
    <header className="screen-head">
      <button type="button" className="quiet-button" onClick={onDesk}>
        <ArrowLeft aria-hidden="true" /> {sayReviewHead('desk')}
      </button>
      <h1 className="head-name" title={review.trainee.name}>
        {review.trainee.name}
      </h1>
      <span className="soft head-words" title={session}>
        {session}
      </span>
      {onSession !== undefined && (
        <button type="button" className="quiet-button" onClick={onSession}>
          <NotebookPen aria-hidden="true" /> {sayReviewHead('sessionNotes')}
        </button>
      )}
      <span className="head-gap" />
      <ReviewButton command={undo} className="quiet-button head-act" shows="words" {...named('undoAct', history.undo)}>
        <Undo2 aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={redo} className="quiet-button head-act" shows="words" {...named('redoAct', history.redo)}>
        <Redo2 aria-hidden="true" />
      </ReviewButton>
      <button
        type="button"
        className="icon-button"
        aria-label={historyCommand.button?.()}
        title={historyCommand.button?.()}
        onClick={() => onPanel('history')}
      >
        <History aria-hidden="true" />
      </button>
      <ReviewButton command={nextToDo} className="icon-button" shows="icon">
        <CalendarClock aria-hidden="true" />
      </ReviewButton>
      <button
        type="button"
        className="icon-button"
        aria-label={keySheet.button?.()}
        title={sayReviewHead('withKey', { name: keySheet.button?.() ?? '', key: keySheet.keys[0] ?? '' })}
        onClick={() => onPanel('keySheet')}
      >
        <Keyboard aria-hidden="true" />
      </button>
      {!secondLook && (
        <ReviewButton command={letter} className="primary" shows="words">
          <FileText aria-hidden="true" />
        </ReviewButton>
      )}
    </header>
  );
}

/** The words of a button that undoes or redoes the act of a name. */
function named(id: 'undoAct' | 'redoAct', name: Message | null): { readonly words?: string; readonly title?: string } {
  if (name === null) return {};
  const act = sayActionName(name);
  return { words: sayReviewHead(id, { act }), title: act };
}

type SessionDialogProps = { readonly sessionId: string; readonly review: Review; readonly onClose: () => void };

/** Title, date, what the trainee wrote with the clips, and what was at hand. */
export function SessionDialog({ sessionId, review, onClose }: SessionDialogProps) {
  const { title, date, notes, painNote, equipment = null } = review.session;
  const [fields, setFields] = useState({ title, date, notes, painNote, equipment });
  const usual = review.trainee.equipment;
  const save = async (): Promise<void> => {
    if ((await mutate('sessions.update', { sessionId, ...fields })) !== null) onClose();
  };
  const set = (change: Partial<typeof fields>): void => setFields({ ...fields, ...change });
  return (
    <FormDialog title={sayReviewHead('session')} doing={sayReviewHead('save')} onDone={save} onClose={onClose}>
      <Field label={sayReviewHead('title')}>
        <input type="text" maxLength={200} value={fields.title} onChange={(e) => set({ title: e.target.value })} />
      </Field>
      <Field label={sayReviewHead('date')}>
        <input type="date" required value={fields.date} onChange={(e) => set({ date: e.target.value })} />
      </Field>
      <Field label={sayReviewHead('notes')}>
        <textarea rows={3} maxLength={2000} value={fields.notes} onChange={(e) => set({ notes: e.target.value })} />
      </Field>
      <Field label={sayReviewHead('pain')}>
        <textarea
          rows={3}
          maxLength={2000}
          value={fields.painNote}
          onChange={(e) => set({ painNote: e.target.value })}
        />
      </Field>
      <EquipmentField
        label={sayReviewHead('equipment')}
        unstated={
          usual === undefined
            ? sayReviewHead('asUsualNotStated')
            : sayReviewHead('asUsual', { equipment: wordsOfEquipment(usual) })
        }
        value={fields.equipment}
        onChange={(at) => set({ equipment: at })}
      />
    </FormDialog>
  );
}
