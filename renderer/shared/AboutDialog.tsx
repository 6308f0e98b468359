import { useEffect, useState } from 'react';
import type { RuntimeFacts } from '../../electron/contract/about.ts';
import { Dialog } from '../base/Dialog.tsx';
import { rackside } from '../bridge/rackside.ts';
import { sayAbout } from '../words/sayAbout.ts';

type About = RuntimeFacts & { readonly version: string };

async function readAbout(): Promise<About | null> {
  const [program, runtime] = await Promise.all([
    rackside().ask('about.get', {}),
    rackside().askWindow('about.runtime', {}),
  ]);
  return program.ok && runtime.ok ? { ...runtime.value, version: program.value.version } : null;
}

/** The button that showed it is gone, and the keyboard goes on from here. */
const takeFocus = (shown: HTMLElement | null): void => shown?.focus();

/** Shown when the menu asks for it: which version this is, what it runs in, whose work is in it. */
export function AboutDialog() {
  const [about, setAbout] = useState<About | null>(null);
  const [notices, setNotices] = useState<string | null>(null);
  useEffect(
    () =>
      rackside().onEvent(({ name }) => {
        if (name !== 'aboutAsked') return;
        void readAbout().then(setAbout);
      }),
    [],
  );
  if (about === null) return null;
  const { version, build, electron, chromium, isOutdated, dataFolder } = about;
  const close = (): void => {
    setAbout(null);
    setNotices(null);
  };
  const showNotices = async (): Promise<void> => {
    const reply = await rackside().ask('about.notices', {});
    setNotices(reply.ok ? reply.value.text : sayAbout('noNotices'));
  };
  return (
    <Dialog title={sayAbout('title')} size="wide" onClose={close}>
      <div className="about">
        <p>
          <strong>{sayAbout('version', { version })}</strong>
          <br />
          {build === null ? sayAbout('checkout') : sayAbout('build', build)}
          <br />
          {sayAbout('runtime', { electron, chromium })}
        </p>
        {isOutdated && <p className="about-outdated">{sayAbout('outdated')}</p>}
        <p>{sayAbout('updates')}</p>
        <p>
          <bdi>{sayAbout('data', { folder: dataFolder })}</bdi>
        </p>
        <p>{sayAbout('licence')}</p>
        {notices === null ? (
          <button type="button" onClick={() => void showNotices()}>
            {sayAbout('showNotices')}
          </button>
        ) : (
          // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard has to reach it
          <section className="about-notices" ref={takeFocus} tabIndex={0} aria-label={sayAbout('notices')}>
            <pre lang="en">{notices}</pre>
          </section>
        )}
      </div>
    </Dialog>
  );
}
