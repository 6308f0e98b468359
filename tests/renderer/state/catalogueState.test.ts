import { afterEach, expect, it } from 'vitest';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { catalogueState } from '../../../renderer/state/catalogueState.ts';
import { deskLanguage } from '../../../renderer/words/deskLanguage.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';

afterEach(() => {
  startAfresh(catalogueState);
  deskLanguage.getState().choose('en');
});

it('reads what is on screen anew when the desk changes its language, and each language once', async () => {
  const { askedFor } = fakeRackside({
    'catalogue.get': ({ language = 'en' }) => {
      const { rubric, exercises, cautions } = translated(shipped, language);
      return { rubric, exercises: [...exercises], cautions: [...cautions], translations: [], rubricVersions: [1] };
    },
  });
  const depth = () => catalogueState.getState().catalogue?.rubric.criteria.find(({ id }) => id === 'depth')?.name;
  await catalogueState.getState().load();
  expect(depth()).toBe('Depth');
  deskLanguage.getState().choose('de');
  await catalogueState.getState().speak();
  expect(depth()).toBe('Tiefe');
  deskLanguage.getState().choose('en');
  await catalogueState.getState().load();
  expect(depth()).toBe('Depth');
  expect(askedFor('catalogue.get')).toEqual([{ language: 'en' }, { language: 'de', version: 1 }]);
});
