/** The window's menu; `&` marks the letter that Alt opens it with. */
export const menu = {
  file: '&File',
  openLibrary: 'Open another library…',
  recentLibraries: 'Recent libraries',
  close: 'Close window',
  quit: 'Quit',
  edit: '&Edit',
  undo: 'Undo',
  redo: 'Redo',
  cut: 'Cut',
  copy: 'Copy',
  paste: 'Paste',
  selectAll: 'Select all',
  view: '&View',
  zoomIn: 'Zoom in',
  zoomOut: 'Zoom out',
  resetZoom: 'Actual size',
  fullScreen: 'Full screen',
  language: '&Language',
  help: '&Help',
  about: 'About Rackside',
} as const;

export type MenuMessageId = keyof typeof menu;
