import { ArrowLeft, Undo2 } from 'lucide-react';
import { useEffect, useState } from 'react';
import { posterAddress } from '../../electron/contract/addresses.ts';
import type { BinItem } from '../../electron/contract/bin.ts';
import { day } from '../base/figures.ts';
import { mutate } from '../bridge/mutate.ts';
import { read } from '../bridge/read.ts';
import { EverywhereCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { sessionWords } from '../shared/arranging/removing.ts';
import { catalogueState } from '../state/catalogueState.ts';
import { screenState } from '../state/screenState.ts';
import { sayArranging } from '../words/sayArranging.ts';
import { sayDesk } from '../words/sayDesk.ts';

const keptDays = 30;

/** What was removed in the last thirty days, to be brought back. */
export function BinScreen() {
  const [items, setItems] = useState<readonly BinItem[] | null>(null);
  const [panel, setPanel] = useCommandPanel();
  const readAgain = (): void => void read('bin.list', {}).then((list) => list !== null && setItems(list));
  // biome-ignore lint/correctness/useExhaustiveDependencies: read once, and after each thing brought back
  useEffect(() => {
    void catalogueState.getState().load();
    readAgain();
  }, []);
  const bringBack = async ({ kind, id }: BinItem): Promise<void> => {
    await mutate('bin.restore', { kind, id });
    readAgain();
  };
  return (
    <>
      <header className="screen-head">
        <button type="button" className="quiet-button" onClick={() => screenState.getState().go({ kind: 'desk' })}>
          <ArrowLeft aria-hidden="true" /> {sayDesk('title')}
        </button>
        <h1>{sayArranging('bin')}</h1>
        <span className="soft head-words">{sayArranging('binWords', { days: keptDays })}</span>
      </header>
      <main className="list-screen">
        {items?.length === 0 && <p className="empty">{sayArranging('binEmpty')}</p>}
        {items !== null && items.length > 0 && (
          <table className="session-table bin-table">
            <thead>
              <tr>
                <th scope="col" className="posters-column">
                  <span className="visually-hidden">{sayArranging('pictures')}</span>
                </th>
                <th scope="col" className="what-column">
                  {sayArranging('what')}
                </th>
                <th scope="col">{sayArranging('from')}</th>
                <th scope="col" className="removed-column">
                  {sayArranging('removed')}
                </th>
                <th scope="col" className="left-column">
                  {sayArranging('left')}
                </th>
                <th scope="col" className="acts-column">
                  <span className="visually-hidden">{sayArranging('bringBack')}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {items.map((item) => (
                <BinLine key={`${item.kind} ${item.id}`} item={item} onBack={() => void bringBack(item)} />
              ))}
            </tbody>
          </table>
        )}
      </main>
      <EverywhereCommands panel={panel} onPanel={setPanel} />
    </>
  );
}

function BinLine({ item, onBack }: { readonly item: BinItem; readonly onBack: () => void }) {
  const name = useBinName(item);
  return (
    <tr data-binned={item.kind}>
      <td className="posters">
        {item.poster !== null && (
          <img src={posterAddress(item.poster.clipId, item.poster.look)} alt="" draggable={false} />
        )}
      </td>
      <th scope="row">
        {name}
        {item.kind !== 'clip' && <span className="soft"> {sayArranging('binClips', { count: item.clips })}</span>}
      </th>
      <td>{item.kind === 'session' ? '' : sessionWords(item)}</td>
      <td className="figure">{day(item.removedAt.slice(0, 10))}</td>
      <td className="figure">{sayArranging('daysLeft', { days: item.daysLeft })}</td>
      <td className="end">
        <button type="button" aria-label={sayArranging('bringBackOf', { name })} onClick={onBack}>
          <Undo2 aria-hidden="true" /> {sayArranging('bringBack')}
        </button>
      </td>
    </tr>
  );
}

function useBinName(item: BinItem): string {
  const catalogue = catalogueState((state) => state.catalogue);
  const exercise = catalogue?.exercises.find(({ id }) => id === item.exercise)?.name ?? item.exercise ?? '';
  switch (item.kind) {
    case 'session':
      return sayArranging('binSession', { name: sessionWords(item) });
    case 'entry':
      return sayArranging('binEntry', { name: exercise });
    case 'clip':
      return sayArranging('binClip', { name: item.clipName ?? '' });
  }
}
