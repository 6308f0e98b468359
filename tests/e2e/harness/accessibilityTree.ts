import type { CDPSession } from 'playwright-core';
import type { App } from './app.ts';

/** A part of the page as the browser hands it to the system's screen readers. */
export type Told = {
  readonly role: string;
  readonly name: string;
  readonly description: string;
  readonly level: number | null;
  readonly isFocusable: boolean;
  /** The parts it stands in, from the nearest; the page itself is the last. */
  readonly within: readonly Told[];
};

/** Turns the accessibility tree on for good, as a screen reader does. */
export async function listenTo(app: App): Promise<CDPSession> {
  const session = await app.page.context().newCDPSession(app.page);
  await session.send('Accessibility.enable');
  return session;
}

/** The accessibility tree of the page, in reading order; what is hidden, or behind a dialog, is not in it. */
export async function accessibilityTree(session: CDPSession): Promise<readonly Told[]> {
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const told = new Map<string, Told>();
  const tell = (id: string): Told | null => {
    const node = byId.get(id);
    const known = told.get(id);
    if (node === undefined || known !== undefined) return known ?? null;
    const parent = node.parentId === undefined ? null : tell(node.parentId);
    const within = parent === null ? [] : [parent, ...parent.within];
    const property = (name: string): unknown => node.properties?.find((one) => one.name === name)?.value.value;
    const level = property('level');
    const one = {
      role: node.ignored ? 'none' : String(node.role?.value ?? ''),
      name: String(node.name?.value ?? '').trim(),
      description: String(node.description?.value ?? '').trim(),
      level: typeof level === 'number' ? level : null,
      isFocusable: !node.ignored && property('focusable') === true,
      within,
    };
    told.set(id, one);
    return one;
  };
  return nodes.map(({ nodeId }) => tell(nodeId)).filter((one) => one !== null);
}
