// @vitest-environment happy-dom
import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { PictureMenu } from '../../../../renderer/review/stage/PictureMenu.tsx';
import { drawingState } from '../../../../renderer/review/state/pictureTools.ts';
import { renderReview } from '../../harness/renderReview.tsx';
import { type ReviewBench, reviewBench } from '../../harness/reviewBench.ts';

async function menu(options: Parameters<typeof reviewBench>[0] = {}): Promise<ReviewBench> {
  const bench = await reviewBench(options);
  renderReview(bench, <PictureMenu />);
  return bench;
}

const opener = () => screen.getByRole('button', { name: /^More/ });

describe('the menu beside the picture’s controls', () => {
  it('opens by its command with the focus on the first line; arrows, Home and End walk through it', async () => {
    const user = userEvent.setup();
    const bench = await menu();
    expect(screen.queryByRole('menu')).toBeNull();
    await bench.run('pictureMenu');
    const first = await screen.findByRole('menuitem', { name: /^Mark the start of a rep/ });
    expect(document.activeElement).toBe(first);
    await user.keyboard('{ArrowDown}');
    expect(document.activeElement).toBe(screen.getByRole('menuitem', { name: /^Mark the stretched end/ }));
    await user.keyboard('{End}');
    expect(document.activeElement).toBe(screen.getByRole('menuitemradio', { name: '2 ×' }));
    await user.keyboard('{ArrowDown}');
    expect(document.activeElement).toBe(first);
  });

  it('closes on Escape and gives the focus back to its button', async () => {
    const user = userEvent.setup();
    await menu();
    await user.click(opener());
    expect(opener().getAttribute('aria-expanded')).toBe('true');
    await user.keyboard('{Escape}');
    expect(screen.queryByRole('menu')).toBeNull();
    expect(document.activeElement).toBe(opener());
  });

  it('closes when another part of the page is clicked', async () => {
    const user = userEvent.setup();
    await menu();
    await user.click(opener());
    await user.click(document.body);
    expect(screen.queryByRole('menu')).toBeNull();
  });

  it('takes out a tool, and puts away the one that is out', async () => {
    const user = userEvent.setup();
    await menu();
    await user.click(opener());
    await user.click(screen.getByRole('menuitemcheckbox', { name: /^Draw on the picture/, checked: false }));
    expect(screen.queryByRole('menu')).toBeNull();
    expect(drawingState.getState().drawing).toBe('on');
    await user.click(opener());
    await user.click(screen.getByRole('menuitemcheckbox', { name: /^Draw on the picture/, checked: true }));
    expect(drawingState.getState().drawing).toBe('off');
  });

  it('sets the speed and stays open for the next choice', async () => {
    const user = userEvent.setup();
    const bench = await menu();
    await user.click(opener());
    await user.click(screen.getByRole('menuitemradio', { name: '0.25 ×' }));
    expect(bench.context.speed).toBe(0.25);
    expect(screen.getByRole('menuitemradio', { name: '0.25 ×', checked: true })).toBeTruthy();
  });

  it('says why a line can’t be used now', async () => {
    const user = userEvent.setup();
    await menu();
    await user.click(opener());
    const layer = screen.getByRole('menuitemcheckbox', { name: /^Show or hide the load path/ });
    expect(layer.getAttribute('aria-disabled')).toBe('true');
    expect(layer.title).toMatch(/not been measured/);
  });

  it('leaves out what nobody may change in a received session', async () => {
    const user = userEvent.setup();
    await menu({ review: { readOnly: true } });
    await user.click(opener());
    const names = screen.getAllByRole('menuitem').map(({ textContent }) => textContent);
    expect(names.join()).not.toMatch(/Mark|Remove/);
    expect(screen.queryByRole('menuitemcheckbox', { name: /^(Draw|Cover)/ })).toBeNull();
    expect(names.join()).toMatch(/Zoom in/);
  });
});
