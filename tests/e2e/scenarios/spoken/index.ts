import assert from 'node:assert/strict';
import type { CDPSession } from 'playwright-core';
import { accessibilityTree, listenTo, type Told } from '../../harness/accessibilityTree.ts';
import { checkerSource } from '../../harness/accessible.ts';
import type { App } from '../../harness/app.ts';
import type { Report } from '../../harness/report.ts';
import type { Scenario } from '../../harness/scenario.ts';
import { checkEase } from './atEase.ts';
import { byKeysAlone } from './byKeysAlone.ts';
import { screens } from './screens.ts';

/** What a screen reader is given of every screen, the room that hands and eyes have there, and the main job without a mouse. */
export const spoken: Scenario = {
  name: 'spoken',
  run: async (bench, report) => {
    const app = await bench.launch(await bench.demoFolder('spoken'));
    await app.page.setViewportSize({ width: 1280, height: 720 });
    await app.page.emulateMedia({ reducedMotion: 'reduce' });
    const session = await listenTo(app);
    const checker = await checkerSource();
    for (const { name, open, leave, controls } of screens(app)) {
      await open();
      await checkTold({ app, session }, report, name, controls);
      await app.page.evaluate(checker);
      await checkEase(app, report, name);
      await leave();
    }
    await session.detach();
    await byKeysAlone(app, report, bench.newFolder('spoken-out'));
    await app.close();
  },
};

/** Parts that are read as one: a control in another of them is told apart by it. */
const groups = [
  ...['row', 'listitem', 'group', 'radiogroup', 'toolbar', 'menu', 'form', 'article', 'dialog'],
  ...['region', 'navigation', 'banner', 'main', 'complementary', 'contentinfo', 'rootwebarea'],
];

const roleOf = ({ role }: Told): string => role.toLowerCase();

type Listened = { readonly app: App; readonly session: CDPSession };

function checkTold(
  { app, session }: Listened,
  report: Report,
  screen: string,
  controls: readonly string[],
): Promise<void> {
  return report.check(`${screen}: names and roles`, async () => {
    const tree = (await accessibilityTree(session)).filter(({ role }) => role !== 'none');
    const focusable = tree.filter((one) => one.isFocusable && roleOf(one) !== 'rootwebarea' && one.role !== 'Iframe');
    const unnamed = focusable.filter((one) => isUnnamed(one) && !isBoxOf(one, focusable));
    assert.deepEqual(unnamed.map(placeOf), [], 'controls without a name or a role');
    assert.deepEqual(twins(focusable), [], 'controls that are told alike in one group');
    const told = new Set(tree.map(({ role, name }) => `${role}: ${name}`));
    assert.deepEqual(
      controls.filter((control) => !told.has(control)),
      [],
      `not among ${focusable.map(({ role, name }) => `${role}: ${name}`).join(' | ')}`,
    );
    assert.deepEqual(tablesUntold(tree), [], 'tables without a name or headers');
    const dialog = tree.find((one) => roleOf(one) === 'dialog');
    const headings = tree.filter((one) => roleOf(one) === 'heading');
    assert.deepEqual(headings.filter(({ name }) => name === '').length, 0, 'headings without words');
    if (dialog !== undefined) {
      assert.notEqual(dialog.name, '');
      assert.ok(
        headings.some(({ within }) => within.includes(dialog)),
        'a heading in the dialog',
      );
      return;
    }
    assert.equal(tree.filter((one) => roleOf(one) === 'main').length, 1, 'main landmarks');
    // The large picture is the review with its head put away.
    const most = screen === 'large picture' ? 0 : 1;
    assert.equal(headings.filter(({ level }) => level === 1).length, most, 'headings of the first level');
    assert.match(await app.page.title(), /^\S.* – Rackside$/);
  });
}

const isUnnamed = (one: Told): boolean => one.name === '' || ['generic', 'genericcontainer', ''].includes(roleOf(one));

/** A box that scrolls is a stop of the Tab key only where nothing in it is one. */
const isBoxOf = (box: Told, focusable: readonly Told[]): boolean =>
  focusable.some(({ within }) => within.includes(box));

const placeOf = ({ role, name, within }: Told): string =>
  [`${role} “${name}”`, ...within.filter((outer) => outer.name !== '').map((outer) => outer.name)].join(' in ');

/** Controls of one group that are told in the same words. */
function twins(controls: readonly Told[]): string[] {
  const seen = new Map<Told | undefined, Set<string>>();
  return controls
    .filter((one) => !['option', 'MenuListOption'].includes(one.role))
    .filter((one) => {
      const group = one.within.find((outer) => groups.includes(roleOf(outer)));
      const words = `${one.role}: ${one.name} (${one.description})`;
      const ofGroup = seen.get(group) ?? new Set();
      seen.set(group, ofGroup);
      const isTwin = ofGroup.has(words);
      ofGroup.add(words);
      return isTwin;
    })
    .map(placeOf);
}

/** Tables that a screen reader could not say the place in. */
const tablesUntold = (tree: readonly Told[]): string[] =>
  tree
    .filter((one) => ['table', 'grid'].includes(roleOf(one)))
    .filter(
      (table) =>
        table.name === '' ||
        !tree.some((one) => ['columnheader', 'rowheader'].includes(roleOf(one)) && one.within.includes(table)),
    )
    .map(placeOf);
