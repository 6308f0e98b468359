/** What is set for the whole library, and how the desk looks. */
export const settings = {
  title: 'Settings',
  desk: 'This desk',

  night: 'Turnaround',
  daysPromised: 'Back within',
  days: '{count, plural, one {day} other {days}}',
  daysPromisedWords:
    'Counted from the day the first clip arrived. A session that takes longer is marked late until it is sent.',

  measuring: 'Measuring',
  measureByItself: 'Measure new clips automatically',
  measureByItselfWords:
    'Newest sessions first, while Rackside is open. The clip on screen goes first; the order can be changed in the job list.',

  privacy: 'Privacy',
  closeAfter: 'Close when unused',
  closeNever: 'Never',
  closeAfterMinutes: 'After {count, plural, one {# minute} other {# minutes}}',
  closeAfterWords:
    'The library closes with the window, so that an encrypted folder or disk can lock itself again. Text is saved and running work finished first. Rackside has no password of its own: lock the screen as well.',
  closesSoon: 'Rackside closes in a minute because it isn’t being used. Press any key to keep it open.',

  phrases: 'Phrases',
  phrasesWords:
    'For use while editing a letter: press Ctrl or Command with the number, or choose one below the text. “{nameMark}” becomes the name, “{exerciseMark}” the exercise.',
  phraseName: 'Name',
  phraseText: 'Text',
  phraseKey: 'Number',
  phraseNoKey: 'none',
  phraseAdd: 'Add phrase',
  phraseRemove: 'Delete phrase: {name}',
  damaged:
    'A disk fault changed a setting, so it is back to its usual value; everything else is safe. Look through the settings.',
  phraseNew: 'New phrase',
} as const;

export type SettingsMessageId = keyof typeof settings;
