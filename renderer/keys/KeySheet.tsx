import { Dialog } from '../parts/Dialog.tsx';
import { chordWords } from './chord.ts';
import { keyGroups, keyTable } from './keyTable.ts';

/** All keys, by group. */
export function KeySheet({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog title="Keys" onClose={onClose} size="wide">
      <div className="key-sheet">
        {keyGroups.map((group) => (
          <section key={group}>
            <h3>{group}</h3>
            <dl>
              {keyTable
                .filter((entry) => entry.group === group)
                .map((entry) => (
                  <div key={entry.id}>
                    <dt>
                      {entry.chords.map((chord, index) => (
                        <span key={chord}>
                          {index > 0 && ' or '}
                          {chordWords(chord).map((word) => (
                            <kbd key={word}>{word}</kbd>
                          ))}
                        </span>
                      ))}
                    </dt>
                    <dd>{entry.label}</dd>
                  </div>
                ))}
            </dl>
          </section>
        ))}
      </div>
    </Dialog>
  );
}
