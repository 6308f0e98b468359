import { EllipsisVertical } from 'lucide-react';
import { useMemo } from 'react';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import { arrangingCommands } from '../commands/arrangingCommands.ts';
import { CommandMenu } from '../commands/CommandMenu.tsx';
import { sessionWords } from '../shared/arranging/removing.ts';
import { sayArranging } from '../words/sayArranging.ts';
import { menuContext } from './deskCommands.ts';

/** Renaming, moving, merging and removing a session, in its row. */
export function SessionMenu({ session }: { readonly session: SessionSummary }) {
  const context = useMemo(() => menuContext(session), [session]);
  return (
    <CommandMenu
      label={sayArranging('menuOf', { name: sessionWords(session) })}
      commands={arrangingCommands}
      context={context}
    >
      <EllipsisVertical aria-hidden="true" />
    </CommandMenu>
  );
}
