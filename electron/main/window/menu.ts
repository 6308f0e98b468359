import type { MenuItemConstructorOptions } from 'electron';

/**
 * The window's menu: only what the platform expects. The desk's own commands, undo among them, belong to the page,
 * which hears their keys first; on a Mac, text fields need the menu for theirs.
 */
export function menuTemplate(platform: string, tools: 'with-tools' | 'without-tools'): MenuItemConstructorOptions[] {
  const mac = platform === 'darwin';
  return [
    ...(mac ? [{ role: 'appMenu' as const }] : []),
    { label: '&File', submenu: [mac ? { role: 'close' } : { role: 'quit' }] },
    {
      label: '&Edit',
      submenu: [
        ...(mac ? [{ role: 'undo' as const }, { role: 'redo' as const }, { type: 'separator' as const }] : []),
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
      ],
    },
    {
      label: '&View',
      submenu: [
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { role: 'resetZoom' },
        { type: 'separator' },
        { role: 'togglefullscreen' },
        ...(tools === 'with-tools' ? [{ role: 'toggleDevTools' as const }] : []),
      ],
    },
  ];
}
