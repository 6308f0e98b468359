import { EllipsisVertical } from 'lucide-react';
import { useMemo } from 'react';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import { CommandMenu } from '../commands/CommandMenu.tsx';
import { sessionWords } from '../shared/arranging/removing.ts';
import { sayArranging } from '../words/sayArranging.ts';
import { menuContext, rowCommands } from './deskCommands.ts';

/** Opening, renaming, moving, merging, removing and finishing a session, in its row. */
export function SessionMenu({ session }: { readonly session: SessionSummary }) {
  const context = useMemo(() => menuContext(session), [session]);
  return (
    <CommandMenu
      label={sayArranging('menuOf', { name: sessionWords(session) })}
      commands={rowCommands}
      context={context}
    >
      <EllipsisVertical aria-hidden="true" />
    </CommandMenu>
  );
}
