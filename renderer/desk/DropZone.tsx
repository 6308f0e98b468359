import { Film } from 'lucide-react';
import { useState } from 'react';
import { droppedPaths, holdsFiles } from './droppedPaths.ts';

type DropZoneProps = {
  readonly disabled: boolean;
  readonly onPaths: (paths: readonly string[]) => void;
  readonly onChoose: () => void;
};

/** Where clips are dropped; a button does the same from a list of files. */
export function DropZone({ disabled, onPaths, onChoose }: DropZoneProps) {
  const [over, setOver] = useState(false);
  return (
    <section
      className="drop-zone"
      aria-label="Bring in clips"
      data-testid="drop-zone"
      data-over={over}
      onDragOver={(event) => {
        if (disabled || !holdsFiles(event.dataTransfer)) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        const paths = droppedPaths(event.dataTransfer);
        if (!disabled && paths.length > 0) onPaths(paths);
      }}
    >
      <Film aria-hidden="true" />
      <p>
        {disabled ? 'Add a session first; then drop its clips here.' : 'Drop clips here, or straight onto a session.'}
      </p>
      <button type="button" disabled={disabled} onClick={onChoose}>
        Add clips
      </button>
      <p className="soft">They are copied into your library. Nothing leaves this computer.</p>
    </section>
  );
}
