import assert from 'node:assert/strict';
import type { App } from '../../harness/app.ts';
import type { Report } from '../../harness/report.ts';

const elsewhere = ['https://elsewhere.example/', 'http://127.0.0.1:9/', 'file:///etc/hosts', 'data:text/html,x'];

/** Ways to addresses that nothing is loaded from: the host is not asked about them. */
const ways: readonly (() => void)[] = [
  () => location.assign('about:blank'),
  () => location.replace('about:blank#x'),
  () => location.assign('about:srcdoc'),
  () => location.assign(URL.createObjectURL(new Blob(['gone'], { type: 'text/html' }))),
  () => location.assign('view-source:app://local/'),
  () => location.assign('filesystem:app://local/temporary/x'),
  () => location.assign('javascript:"gone"'),
  () => void window.open('about:blank', '_self'),
  () => void window.open('about:blank', '_top'),
  () => void window.open('about:blank'),
  () => void window.open(''),
  () => void window.open('javascript:1'),
  () => Object.assign(document.createElement('a'), { href: 'about:blank' }).click(),
  () => {
    const frame = document.createElement('iframe');
    document.body.append(frame);
    frame.contentWindow?.open('about:blank', '_top');
    frame.remove();
  },
  () => {
    const refresh = Object.assign(document.createElement('meta'), {
      httpEquiv: 'refresh',
      content: '0;url=about:blank',
    });
    document.head.append(refresh);
  },
  () => history.back(),
];

async function staysPut(app: App): Promise<void> {
  // The page answers, so it is alive, and is where it was.
  assert.match(await app.page.evaluate(() => location.href), /^app:\/\/local\//);
  assert.equal(await app.page.evaluate(() => document.getElementById('root') !== null), true);
  assert.equal(app.page.context().pages().length, 1);
}

/** Permissions, windows and addresses: all refused. */
export async function checkNavigation(app: App, { check }: Report): Promise<void> {
  const { page } = app;

  await check('every permission is refused', async () => {
    const answers = await page.evaluate(async () => {
      const names = ['geolocation', 'notifications', 'camera', 'microphone', 'midi', 'clipboard-read'];
      const states = names.map(async (name) => {
        const status = await navigator.permissions.query({ name: name as PermissionName });
        return `${name}: ${status.state}`;
      });
      const position = new Promise<string>((resolve) => {
        navigator.geolocation.getCurrentPosition(
          () => resolve('position: given'),
          (error) => resolve(`position: ${error.code === error.PERMISSION_DENIED ? 'denied' : 'failed'}`),
        );
      });
      const camera = navigator.mediaDevices.getUserMedia({ video: true, audio: true }).then(
        () => 'media: given',
        () => 'media: denied',
      );
      const sound = navigator.mediaDevices.getUserMedia({ audio: true }).then(
        () => 'sound: given',
        () => 'sound: denied',
      );
      const notice = Notification.requestPermission().then((state) => `notice: ${state}`);
      return Promise.all([...states, position, camera, sound, notice]);
    });
    assert.deepEqual(
      answers.filter((answer) => !answer.endsWith('denied')),
      [],
    );
  });

  await check('no further window opens', async () => {
    const opened = await page.evaluate(() => window.open('https://elsewhere.example/') !== null);
    assert.equal(opened, false);
    assert.equal(await page.evaluate(() => window.open('/index.html') !== null), false);
    for (const button of ['left', 'middle'] as const) {
      await page.evaluate(() => {
        const link = document.createElement('a');
        link.href = '/index.html';
        link.target = '_blank';
        link.id = 'tried-link';
        link.textContent = 'try';
        link.style.cssText = 'position:fixed;left:0;top:0;width:80px;height:40px;z-index:99999';
        document.body.append(link);
      });
      await page.mouse.click(20, 20, { button });
      await page.evaluate(() => document.getElementById('tried-link')?.remove());
    }
    await staysPut(app);
  });

  for (const address of elsewhere) {
    await check(`the window does not go to ${new URL(address).protocol}//…`, async () => {
      await page.evaluate((target) => {
        location.href = target;
      }, address);
      await staysPut(app);
      await page.evaluate((target) => {
        const link = document.createElement('a');
        link.href = target;
        document.body.append(link);
        link.click();
        link.remove();
      }, address);
      await staysPut(app);
    });
  }

  await check('no address that loads nothing takes the page away', async () => {
    await page.evaluate(() => Object.assign(window, { stays: true }));
    for (const way of ways) {
      await page.evaluate(way);
      await staysPut(app);
    }
    // It is the same page still, not one that was loaded again.
    assert.equal(await page.evaluate(() => Reflect.get(window, 'stays')), true);
  });

  await check('a form goes nowhere', async () => {
    await page.evaluate(() => {
      const form = document.createElement('form');
      form.action = 'https://elsewhere.example/';
      form.method = 'post';
      document.body.append(form);
      form.submit();
      form.remove();
    });
    await staysPut(app);
  });
}
