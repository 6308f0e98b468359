import { useState } from 'react';
import type { Voice } from '../../electron/contract/library.ts';
import { Field } from '../base/fields.tsx';
import { NamePlate } from '../base/NamePlate.tsx';
import { mutate } from '../bridge/mutate.ts';
import { rackside } from '../bridge/rackside.ts';
import { JobRow } from '../shared/JobRow.tsx';
import { LanguageField } from '../shared/LanguageField.tsx';
import { ThemeField } from '../shared/ThemeField.tsx';
import { usualFacts } from '../shared/TraineeFields.tsx';
import { jobsState } from '../state/jobsState.ts';
import { libraryState } from '../state/libraryState.ts';
import { sayFirstStart } from '../words/sayFirstStart.ts';
import { sayProblem } from '../words/sayProblem.ts';

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
    const name = coach.trim();
    const reply = await rackside().ask('library.create', { contents, voice, coach: name });
    if (!reply.ok) {
      setState('asking');
      return setTrouble(sayProblem(reply.problem));
    }
    if (voice === 'self') await addMyself(name);
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
        <p>{sayFirstStart('makingDemo')}</p>
        <ul className="job-list">{job !== undefined && <JobRow job={job} />}</ul>
        {job?.state === 'failed' && (
          <button type="button" onClick={() => onDemoJob(null)}>
            {sayFirstStart('withoutDemo')}
          </button>
        )}
      </main>
    );
  }
  return (
    <main className="first-start">
      <div className="first-start-head">
        <h1>
          <NamePlate />
        </h1>
        <LanguageField />
        <ThemeField />
      </div>
      <p className="lead">{sayFirstStart('lead')}</p>
      <form
        className="form"
        onSubmit={(event) => {
          event.preventDefault();
          void start();
        }}
      >
        <fieldset>
          <legend>{sayFirstStart('startWith')}</legend>
          <Choice
            group="contents"
            title={sayFirstStart('demo')}
            words={sayFirstStart('demoWords')}
            chosen={contents === 'demo'}
            onChoose={() => setContents('demo')}
          />
          <Choice
            group="contents"
            title={sayFirstStart('empty')}
            words={sayFirstStart('emptyWords', { voice })}
            chosen={contents === 'empty'}
            onChoose={() => setContents('empty')}
          />
        </fieldset>
        <fieldset>
          <legend>{sayFirstStart('who')}</legend>
          <Choice
            group="voice"
            title={sayFirstStart('coach')}
            words={sayFirstStart('coachWords', { voice })}
            chosen={voice === 'coach'}
            onChoose={() => setVoice('coach')}
          />
          <Choice
            group="voice"
            title={sayFirstStart('self')}
            words={sayFirstStart('selfWords')}
            chosen={voice === 'self'}
            onChoose={() => setVoice('self')}
          />
        </fieldset>
        <Field label={sayFirstStart('name', { voice })}>
          <input
            type="text"
            required={voice === 'self'}
            maxLength={200}
            value={coach}
            onChange={(event) => setCoach(event.target.value)}
          />
        </Field>
        {trouble !== '' && <p role="alert">{trouble}</p>}
        <button type="submit" className="primary" disabled={state === 'starting'}>
          {sayFirstStart('start')}
        </button>
      </form>
    </main>
  );
}

/** Whoever reviews their own sets is the one who lifts: their name is asked once. */
async function addMyself(name: string): Promise<void> {
  const { goal, experience, units, minor } = usualFacts;
  await mutate('trainees.add', { name, goal, experience, units, minor });
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
