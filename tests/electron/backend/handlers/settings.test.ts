import { expect, it } from 'vitest';
import { alterLibrary } from '../alterLibrary.ts';
import { ask, backendOn, newLibrary, refusal, temporaryFolder } from '../workbench.ts';

it('keeps what is set, over a restart, and leaves the rest as usual', async () => {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const usual = await ask(backend, 'settings.get', {});
  expect(usual.measureByItself).toBe(true);
  await ask(backend, 'settings.change', { measureByItself: false });
  await backend.close();
  expect(await ask(backendOn(folder), 'settings.get', {})).toEqual({ ...usual, measureByItself: false });
});

it('tells that something was set', async () => {
  const backend = await newLibrary();
  const told: string[] = [];
  backend.onEvent(({ name }) => told.push(name));
  await ask(backend, 'settings.change', { measureByItself: false });
  expect(told.filter((name) => name === 'settingsChanged')).toHaveLength(1);
});

it('refuses a setting that there is not, and one of another kind', async () => {
  const backend = await newLibrary();
  for (const change of [{ measureNever: true }, { measureByItself: 'yes' }]) {
    // @ts-expect-error what a page of another version might ask
    expect(await refusal(backend, 'settings.change', change)).toMatchObject({ code: 'bad-request' });
  }
});

it('takes what is stored and can’t be understood as not set', async () => {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const usual = await ask(backend, 'settings.get', {});
  await backend.close();
  alterLibrary(folder, `INSERT INTO setting VALUES ('measureByItself', '"perhaps"'), ('ofLater', '1')`);
  expect(await ask(backendOn(folder), 'settings.get', {})).toEqual(usual);
});
