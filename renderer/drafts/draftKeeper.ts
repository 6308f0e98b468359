import type { Later } from '../base/later.ts';

export type DraftKeeperOptions = {
  /** Saves one text; false when it could not be saved, and is to be kept. */
  readonly save: (key: string, text: string) => Promise<boolean>;
  readonly later: Later;
  readonly idleMs: number;
  readonly onChange: (drafts: Readonly<Record<string, string>>) => void;
};

export type DraftKeeper = {
  /** Takes what was typed; saved after a short rest. */
  readonly type: (key: string, text: string) => void;
  /** Saves now what is not saved yet; requests leave before this returns. */
  readonly flush: () => Promise<void>;
  /** Drops drafts whose keys start so, unsaved. */
  readonly forget: (keyPrefix: string) => void;
};

/** Holds typed text until the backend has it, so that no rest, blur or closing window loses a letter. */
export function createDraftKeeper({ save, later, idleMs, onChange }: DraftKeeperOptions): DraftKeeper {
  let drafts: Readonly<Record<string, string>> = {};
  const sent = new Map<string, string>();
  let callOff = (): void => {};

  const change = (next: Readonly<Record<string, string>>): void => {
    drafts = next;
    onChange(drafts);
  };
  const drop = (isDropped: (key: string) => boolean): void =>
    change(Object.fromEntries(Object.entries(drafts).filter(([key]) => !isDropped(key))));

  async function saveOne(key: string, text: string): Promise<void> {
    sent.set(key, text);
    const saved = await save(key, text);
    if (sent.get(key) === text) sent.delete(key);
    if (saved && drafts[key] === text) drop((known) => known === key);
  }

  async function flush(): Promise<void> {
    callOff();
    const unsent = Object.entries(drafts).filter(([key, text]) => sent.get(key) !== text);
    await Promise.all(unsent.map(([key, text]) => saveOne(key, text)));
  }

  return {
    type: (key, text) => {
      change({ ...drafts, [key]: text });
      callOff();
      callOff = later(idleMs, () => void flush());
    },
    flush,
    forget: (keyPrefix) => drop((key) => key.startsWith(keyPrefix)),
  };
}
