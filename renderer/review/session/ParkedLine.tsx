import { SquareParking } from 'lucide-react';
import { parked as parkedCommand } from '../../commands/arrangingCommands.ts';
import { useParked } from '../../shared/arranging/ParkedDialog.tsx';
import { sayArranging } from '../../words/sayArranging.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';

/** How much is parked of what was judged in a session; nothing where nothing is. */
export function ParkedLine({ sessionId }: { readonly sessionId: string }) {
  const parked = useParked(sessionId);
  if (parked === null) return null;
  const count = parked.flags.length + parked.ticks.reduce((sum, ticks) => sum + ticks.count, 0);
  if (count === 0) return null;
  return (
    <ReviewButton
      command={parkedCommand}
      className="quiet-button"
      shows="words"
      words={sayArranging('parkedLine', { count })}
    >
      <SquareParking aria-hidden="true" />
    </ReviewButton>
  );
}
