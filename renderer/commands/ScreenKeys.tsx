import { useMemo, useState } from 'react';
import { HistoryPanel } from '../shared/HistoryPanel.tsx';
import { themeState } from '../state/themeState.ts';
import { KeySheet } from './KeySheet.tsx';
import { Palette } from './Palette.tsx';
import { type KeyActs, useKeys } from './useKeys.ts';

type ScreenKeysProps = {
  readonly acts: KeyActs;
  readonly takesFirst?: (event: KeyboardEvent) => boolean;
  /** The session whose history can be gone back in; null where there is none. */
  readonly sessionId: string | null;
  /** Asked for from outside, by a button. */
  readonly asked: KeyPanel;
  readonly onAsk: (panel: KeyPanel) => void;
};

/** What lies over a screen for its keys. */
export type KeyPanel = 'none' | 'sheet' | 'palette' | 'history';

/** A screen's open panel, and the acts that open each. */
export function useKeyPanel(): readonly [KeyPanel, (panel: KeyPanel) => void] {
  return useState<KeyPanel>('none');
}

/** The keys of a screen, with the sheet, the palette and the history that every screen has. */
export function ScreenKeys({ acts, takesFirst, sessionId, asked, onAsk }: ScreenKeysProps) {
  const all = useMemo(
    (): KeyActs => ({
      ...acts,
      keySheet: () => onAsk('sheet'),
      palette: () => onAsk('palette'),
      theme: () => themeState.getState().next(),
      ...(sessionId === null ? {} : { history: () => onAsk('history') }),
    }),
    [acts, onAsk, sessionId],
  );
  useKeys(all, takesFirst);
  const close = (): void => onAsk('none');
  switch (asked) {
    case 'none':
      return null;
    case 'sheet':
      return <KeySheet onClose={close} />;
    case 'palette':
      return <Palette acts={all} onClose={close} />;
    case 'history':
      return sessionId === null ? null : <HistoryPanel sessionId={sessionId} onClose={close} />;
  }
}
