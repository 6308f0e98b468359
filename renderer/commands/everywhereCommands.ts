import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { screenState } from '../state/screenState.ts';
import { sayCommandPanels } from '../words/sayCommandPanels.ts';
import { sayProblem } from '../words/sayProblem.ts';
import { sayReasons } from '../words/sayReasons.ts';
import { available, type Command, type CommandContext, unavailable } from './command.ts';
import { named } from './named.ts';

/** The panels over a screen that belong to its commands. */
export type CommandPanel = 'none' | 'keySheet' | 'palette' | 'history' | 'settings';

/** What a screen tells the commands that every screen has. */
export type EverywhereContext = CommandContext & {
  /** The session on screen, whose history can be shown; null where there is none. */
  readonly sessionId: string | null;
  readonly open: (panel: CommandPanel) => void;
  readonly changeTheme: () => void;
  readonly changeLanguage: () => void;
};

export const theme: Command<EverywhereContext> = {
  ...named('theme'),
  group: 'anywhere',
  keys: ['Shift+D'],
  readOnly: 'allowed',
  run: ({ changeTheme }) => changeTheme(),
};

export const language: Command<EverywhereContext> = {
  ...named('language'),
  group: 'anywhere',
  keys: [],
  readOnly: 'allowed',
  run: ({ changeLanguage }) => changeLanguage(),
};

export const history: Command<EverywhereContext> = {
  ...named('history'),
  group: 'anywhere',
  keys: ['Mod+H'],
  readOnly: 'allowed',
  when: ({ sessionId }) => (sessionId === null ? unavailable(sayReasons('noSession')) : available),
  run: ({ open }) => open('history'),
};

export const palette: Command<EverywhereContext> = {
  ...named('palette'),
  group: 'anywhere',
  keys: ['/'],
  palette: 'unlisted',
  readOnly: 'allowed',
  run: ({ open }) => open('palette'),
};

export const keySheet: Command<EverywhereContext> = {
  ...named('keySheet'),
  group: 'anywhere',
  keys: ['?'],
  readOnly: 'allowed',
  run: ({ open }) => open('keySheet'),
};

/** What is set for the whole library, and how the desk looks. */
export const settings: Command<EverywhereContext> = {
  ...named('settings'),
  group: 'anywhere',
  keys: ['Mod+,'],
  readOnly: 'allowed',
  run: ({ open }) => open('settings'),
};

/** Writes the log, versions and a check of the library into a file, without names or footage. */
export const problemReport: Command<EverywhereContext> = {
  ...named('problemReport'),
  group: 'anywhere',
  keys: [],
  readOnly: 'allowed',
  run: async () => {
    const reply = await rackside().askWindow('report.save', {});
    const { tell } = statusState.getState();
    if (!reply.ok) tell(sayProblem(reply.problem));
    else if (reply.value.path !== null) tell(sayCommandPanels('reportSaved', { path: reply.value.path }));
  },
};

/** Goes to what came in and belongs to no session yet. */
export const inbox: Command<EverywhereContext> = {
  ...named('inbox'),
  group: 'anywhere',
  keys: ['Mod+I'],
  readOnly: 'allowed',
  run: () => screenState.getState().go({ kind: 'inbox' }),
};

/** The commands of every screen. */
export const everywhereCommands: readonly Command<EverywhereContext>[] = [
  theme,
  language,
  history,
  inbox,
  settings,
  problemReport,
  palette,
  keySheet,
];
