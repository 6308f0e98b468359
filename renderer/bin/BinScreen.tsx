import { ArrowLeft, Trash2, Undo2 } from 'lucide-react';
import { useEffect, useState } from 'react';
import { posterAddress } from '../../electron/contract/addresses.ts';
import type { BinItem } from '../../electron/contract/bin.ts';
import { FormDialog } from '../base/Dialog.tsx';
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

/** What is about to be deleted for good: one thing, or all. */
type Deleting = BinItem | 'all';

/** What was removed in the last thirty days, to be brought back or deleted at once. */
export function BinScreen() {
  const [items, setItems] = useState<readonly BinItem[] | null>(null);
  const [deleting, setDeleting] = useState<Deleting | null>(null);
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
        <span className="head-gap" />
        {items !== null && items.length > 0 && (
          <button type="button" onClick={() => setDeleting('all')}>
            <Trash2 aria-hidden="true" /> {sayArranging('emptyBin')}
          </button>
        )}
      </header>
      <main className="list-screen">
        {items?.length === 0 && <p className="empty">{sayArranging('binEmpty')}</p>}
        {items !== null && items.length > 0 && (
          <table className="session-table bin-table" aria-label={sayArranging('bin')}>
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
                  <span className="visually-hidden">{sayArranging('bringBackOrDelete')}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {items.map((item) => (
                <BinLine
                  key={`${item.kind} ${item.id}`}
                  item={item}
                  onBack={() => void bringBack(item)}
                  onDelete={() => setDeleting(item)}
                />
              ))}
            </tbody>
          </table>
        )}
      </main>
      {deleting !== null && items !== null && (
        <DeleteDialog
          deleting={deleting}
          items={items}
          onClose={() => setDeleting(null)}
          onDone={() => {
            setDeleting(null);
            readAgain();
          }}
        />
      )}
      <EverywhereCommands panel={panel} onPanel={setPanel} />
    </>
  );
}

type DeleteDialogProps = {
  readonly deleting: Deleting;
  readonly items: readonly BinItem[];
  readonly onClose: () => void;
  readonly onDone: () => void;
};

/** Asks before anything is deleted for good, and says what goes. */
function DeleteDialog({ deleting, items, onClose, onDone }: DeleteDialogProps) {
  const name = useBinName(deleting === 'all' ? undefined : deleting);
  const destroy = async (): Promise<void> => {
    const done =
      deleting === 'all'
        ? await mutate('bin.empty', {})
        : await mutate('bin.delete', { kind: deleting.kind, id: deleting.id });
    if (done !== null) onDone();
  };
  const going = deleting === 'all' ? 'all' : deleting.kind;
  const clips = (deleting === 'all' ? items : [deleting]).reduce((sum, item) => sum + item.clips, 0);
  return (
    <FormDialog
      title={deleting === 'all' ? sayArranging('emptyBin') : sayArranging('deleteOf', { name })}
      doing={sayArranging('deleteForGood')}
      onDone={destroy}
      onClose={onClose}
    >
      <p>{sayArranging('whatGoes', { going, things: items.length, clips })}</p>
      <p>
        <strong>{sayArranging('notUndone')}</strong>
      </p>
    </FormDialog>
  );
}

type BinLineProps = { readonly item: BinItem; readonly onBack: () => void; readonly onDelete: () => void };

function BinLine({ item, onBack, onDelete }: BinLineProps) {
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
        {(item.kind === 'session' || item.kind === 'entry') && (
          <span className="soft"> {sayArranging('binClips', { count: item.clips })}</span>
        )}
      </th>
      <td>{fromWords(item)}</td>
      <td className="figure">{day(item.removedAt.slice(0, 10))}</td>
      <td className="figure">{sayArranging('daysLeft', { days: item.daysLeft })}</td>
      <td className="end">
        <button type="button" aria-label={sayArranging('bringBackOf', { name })} onClick={onBack}>
          <Undo2 aria-hidden="true" /> {sayArranging('bringBack')}
        </button>{' '}
        <button
          type="button"
          className="icon-button"
          aria-label={sayArranging('deleteOf', { name })}
          title={sayArranging('deleteNow')}
          onClick={onDelete}
        >
          <Trash2 aria-hidden="true" />
        </button>
      </td>
    </tr>
  );
}

/** Where something was before it was removed. */
function fromWords(item: BinItem): string {
  if (item.kind === 'session') return '';
  return item.kind === 'file' ? sayArranging('fromInbox') : sessionOf(item);
}

const sessionOf = ({ date, ...item }: BinItem): string => sessionWords({ ...item, date: date ?? '' });

function useBinName(item: BinItem | undefined): string {
  const catalogue = catalogueState((state) => state.catalogue);
  const exercise = catalogue?.exercises.find(({ id }) => id === item?.exercise)?.name ?? item?.exercise ?? '';
  switch (item?.kind) {
    case undefined:
      return '';
    case 'session':
      return sayArranging('binSession', { name: sessionOf(item) });
    case 'entry':
      return sayArranging('binEntry', { name: exercise });
    case 'file':
      return sayArranging('binFile', { name: item.clipName ?? '' });
    case 'clip':
      return sayArranging('binClip', { name: item.clipName ?? '' });
  }
}
