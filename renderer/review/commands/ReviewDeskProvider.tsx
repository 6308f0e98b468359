import { createContext, type ReactNode, useContext, useSyncExternalStore } from 'react';
import { CommandButton, type CommandButtonProps } from '../../commands/CommandButton.tsx';
import {
  type Availability,
  availabilityOf,
  available,
  type Command,
  runCommand,
  unavailable,
} from '../../commands/command.ts';
import type { ReviewContext } from './reviewContext.ts';
import type { ReviewDesk } from './reviewDesk.ts';

const Desk = createContext<ReviewDesk | null>(null);

/** Hands the review's context to everything on its screen. */
export function ReviewDeskProvider({ desk, children }: { readonly desk: ReviewDesk; readonly children: ReactNode }) {
  return <Desk value={desk}>{children}</Desk>;
}

/** The review desk of this screen. */
export function useReviewDesk(): ReviewDesk {
  const desk = useContext(Desk);
  if (desk === null) throw new Error('This part stands only on the review screen.');
  return desk;
}

/** The context that the review's commands run with. */
export const useReview = (): ReviewContext => useReviewDesk().context;

/** Whether a command can run now; renders again when that changes. */
export function useAvailability(command: Command<ReviewContext>): Availability {
  const { context, subscribe } = useReviewDesk();
  const reason = useSyncExternalStore(subscribe, () => {
    const availability = availabilityOf(command, context);
    return availability.can ? '' : availability.because;
  });
  return reason === '' ? available : unavailable(reason);
}

type ReviewButtonProps = Omit<CommandButtonProps, 'command' | 'availability' | 'onRun'> & {
  readonly command: Command<ReviewContext>;
  /** What the button does in place of its command, such as to put away the tools that the command took out. */
  readonly instead?: ((context: ReviewContext) => void) | undefined;
};

/** The button of one of the review's commands. */
export function ReviewButton({ command, instead, ...shown }: ReviewButtonProps) {
  const context = useReview();
  const availability = useAvailability(command);
  return (
    <CommandButton
      {...shown}
      command={command}
      availability={availability}
      onRun={() => (instead === undefined ? runCommand(command, context) : instead(context))}
    />
  );
}
