import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { available, type Command, type CommandContext, unavailable } from './command.ts';

/** The panels over a screen that belong to its commands. */
export type CommandPanel = 'none' | 'keySheet' | 'palette' | 'history';

/** What a screen tells the commands that every screen has. */
export type EverywhereContext = CommandContext & {
  /** The session on screen, whose history can be shown; null where there is none. */
  readonly sessionId: string | null;
  readonly open: (panel: CommandPanel) => void;
  readonly changeTheme: () => void;
  readonly changeLanguage: () => void;
};

export const theme: Command<EverywhereContext> = {
  id: 'theme',
  group: 'Anywhere',
  label: 'Light, dark, or like the system',
  keys: ['Shift+D'],
  readOnly: 'allowed',
  run: ({ changeTheme }) => changeTheme(),
};

export const language: Command<EverywhereContext> = {
  id: 'language',
  group: 'Anywhere',
  label: 'Language of the desk: English or Deutsch',
  keys: [],
  readOnly: 'allowed',
  run: ({ changeLanguage }) => changeLanguage(),
};

export const history: Command<EverywhereContext> = {
  id: 'history',
  group: 'Anywhere',
  label: 'See what was done, and go back to any of it',
  keys: ['Mod+H'],
  button: 'What was done',
  readOnly: 'allowed',
  when: ({ sessionId }) => (sessionId === null ? unavailable('No session is open on this screen.') : available),
  run: ({ open }) => open('history'),
};

export const palette: Command<EverywhereContext> = {
  id: 'palette',
  group: 'Anywhere',
  label: 'Find a command by its name',
  keys: ['/'],
  palette: 'unlisted',
  readOnly: 'allowed',
  run: ({ open }) => open('palette'),
};

export const keySheet: Command<EverywhereContext> = {
  id: 'keySheet',
  group: 'Anywhere',
  label: 'Show and change the keys',
  keys: ['?'],
  button: 'Keys',
  readOnly: 'allowed',
  run: ({ open }) => open('keySheet'),
};

/** Writes the log, versions and a check of the library into a file, without names or footage. */
export const problemReport: Command<EverywhereContext> = {
  id: 'problemReport',
  group: 'Anywhere',
  label: 'Save a problem report',
  keys: [],
  readOnly: 'allowed',
  run: async () => {
    const reply = await rackside().askWindow('report.save', {});
    const { tell } = statusState.getState();
    if (!reply.ok) tell(reply.problem.sentence);
    else if (reply.value.path !== null) tell(`The problem report is saved: ${reply.value.path}`);
  },
};

/** The commands of every screen. */
export const everywhereCommands: readonly Command<EverywhereContext>[] = [
  theme,
  language,
  history,
  problemReport,
  palette,
  keySheet,
];
