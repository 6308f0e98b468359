import { beforeEach, describe, expect, it } from 'vitest';
import { mutate } from '../../../renderer/bridge/mutate.ts';
import { read } from '../../../renderer/bridge/read.ts';
import { statusState } from '../../../renderer/bridge/statusState.ts';
import { screenState } from '../../../renderer/state/screenState.ts';
import { changed, fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';

const status = () => statusState.getState();

describe('what the status line says', () => {
  beforeEach(() => {
    startAfresh(statusState);
    startAfresh(screenState);
  });

  it('tells why something was not saved until something is', async () => {
    fakeRackside({ 'jobs.retry': () => changed });
    await mutate('jobs.cancel', { jobId: 'j' });
    expect(status()).toMatchObject({ saving: 'failed', notice: 'No answer to jobs.cancel in this test.' });
    await read('desk.trainees', {}).catch(() => null);
    expect(status().notice).not.toBe('');
    await mutate('jobs.cancel', { jobId: 'j' });
    await mutate('jobs.retry', { jobId: 'j' });
    expect(status()).toMatchObject({ saving: 'saved', notice: '' });
  });

  it('tells why something was not read until something is', async () => {
    fakeRackside({ 'desk.trainees': () => [] });
    await read('jobs.list', {});
    expect(status().notice).toBe('No answer to jobs.list in this test.');
    await read('desk.trainees', {});
    expect(status().notice).toBe('');
  });

  it('drops “Not saved” and refusals with the screen they were about, and keeps news', async () => {
    fakeRackside({});
    await mutate('jobs.cancel', { jobId: 'j' });
    screenState.getState().go({ kind: 'trainee', traineeId: 't1' });
    expect(status()).toMatchObject({ saving: 'idle', notice: '' });
    status().refuse('Not now.');
    screenState.getState().go({ kind: 'desk' });
    expect(status().notice).toBe('');
    status().tell('The report was saved.');
    screenState.getState().go({ kind: 'trainee', traineeId: 't1' });
    expect(status().notice).toBe('The report was saved.');
  });
});
