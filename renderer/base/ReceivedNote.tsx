import { Inbox } from 'lucide-react';

/** Above a session that came from another desk. */
export function ReceivedNote() {
  return (
    <p className="received-note" role="note">
      <Inbox aria-hidden="true" />
      <span>
        <strong>Received from another desk.</strong> You see it as it was handed over; nothing in it can be changed
        here.
      </span>
    </p>
  );
}
