import { useState } from 'react';
import type { Voice } from '../../electron/contract/library.ts';
import { Field } from '../base/fields.tsx';
import { NamePlate } from '../base/NamePlate.tsx';
import { rackside } from '../bridge/rackside.ts';
import { JobRow } from '../shared/JobRow.tsx';
import { jobsState } from '../state/jobsState.ts';
import { libraryState } from '../state/libraryState.ts';

type Contents = 'demo' | 'empty';

type FirstStartProps = { readonly demoJobId: string | null; readonly onDemoJob: (jobId: string | null) => void };

/** The first thing a new coach sees: what to begin with, and who speaks. */
export function FirstStartScreen({ demoJobId, onDemoJob }: FirstStartProps) {
  const [contents, setContents] = useState<Contents>('demo');
  const [voice, setVoice] = useState<Voice>('coach');
  const [coach, setCoach] = useState('');
  const [state, setState] = useState<'asking' | 'starting'>('asking');
  const [trouble, setTrouble] = useState('');
  const job = jobsState((jobs) => jobs.jobs.find((known) => known.id === demoJobId));

  const start = async (): Promise<void> => {
    setState('starting');
    setTrouble('');
    const reply = await rackside().ask('library.create', { contents, voice, coach: coach.trim() });
    if (!reply.ok) {
      setState('asking');
      return setTrouble(reply.problem.sentence);
    }
    if (reply.value.jobId !== null) onDemoJob(reply.value.jobId);
    await jobsState.getState().refresh();
    await libraryState.getState().refresh();
  };

  if (demoJobId !== null) {
    return (
      <main className="first-start">
        <h1>
          <NamePlate />
        </h1>
        <p>Making the demo session: clips are copied in and read. This takes a few seconds.</p>
        <ul className="job-list">{job !== undefined && <JobRow job={job} />}</ul>
        {job?.state === 'failed' && (
          <button type="button" onClick={() => onDemoJob(null)}>
            Go on without the demo
          </button>
        )}
      </main>
    );
  }
  return (
    <main className="first-start">
      <h1>
        <NamePlate />
      </h1>
      <p className="lead">A desk for reviewing lifts. Footage, flags and letters stay on this computer.</p>
      <form
        className="form"
        onSubmit={(event) => {
          event.preventDefault();
          void start();
        }}
      >
        <fieldset>
          <legend>Begin with</legend>
          <Choice
            group="contents"
            title="The demo session"
            words="An invented trainee with three clips, reps, flags and grades to look around in."
            chosen={contents === 'demo'}
            onChoose={() => setContents('demo')}
          />
          <Choice
            group="contents"
            title="An empty library"
            words="Nothing in it yet: add your trainees and drop in clips."
            chosen={contents === 'empty'}
            onChoose={() => setContents('empty')}
          />
        </fieldset>
        <fieldset>
          <legend>Who reviews</legend>
          <Choice
            group="voice"
            title="A coach"
            words="Letters speak to your trainees."
            chosen={voice === 'coach'}
            onChoose={() => setVoice('coach')}
          />
          <Choice
            group="voice"
            title="Myself"
            words="Letters are notes to yourself about your own sets."
            chosen={voice === 'self'}
            onChoose={() => setVoice('self')}
          />
        </fieldset>
        <Field label={voice === 'coach' ? 'Name under your letters' : 'Your name'}>
          <input type="text" maxLength={200} value={coach} onChange={(event) => setCoach(event.target.value)} />
        </Field>
        {trouble !== '' && <p role="alert">{trouble}</p>}
        <button type="submit" className="primary" disabled={state === 'starting'}>
          Start
        </button>
      </form>
    </main>
  );
}

type ChoiceProps = {
  readonly group: string;
  readonly title: string;
  readonly words: string;
  readonly chosen: boolean;
  readonly onChoose: () => void;
};

/** One of a few choices, with what it means. */
function Choice({ group, title, words, chosen, onChoose }: ChoiceProps) {
  return (
    <label className="choice">
      <input type="radio" name={group} checked={chosen} onChange={onChoose} />
      <span>
        <strong>{title}</strong>
        <span className="soft">{words}</span>
      </span>
    </label>
  );
}
