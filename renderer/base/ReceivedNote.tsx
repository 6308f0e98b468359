import { Inbox } from 'lucide-react';
import { sayParts } from '../words/sayParts.ts';

/** Above a session that came from another coach's Rackside. */
export function ReceivedNote() {
  return (
    <p className="received-note" role="note">
      <Inbox aria-hidden="true" />
      <span>
        <strong>{sayParts('received')}</strong> {sayParts('receivedWords')}
      </span>
    </p>
  );
}
