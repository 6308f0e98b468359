/** A window that shows web pages and nothing of Rackside, for pages that are opened from the file system. */
const { app, BrowserWindow } = require('electron');

app.whenReady().then(() => {
  const window = new BrowserWindow({
    width: 1300,
    height: 900,
    useContentSize: true,
    webPreferences: { sandbox: true, contextIsolation: true, nodeIntegration: false },
  });
  return window.loadURL('about:blank');
});
app.on('window-all-closed', () => app.quit());
