import { useEffect } from 'react';
import { rackside } from '../bridge/rackside.ts';
import { FootageOutsideDialog } from './FootageOutsideDialog.tsx';
import { footageOutsideState, receive } from './receive.ts';

/** Takes in the files that the system names, from the start on, and asks about footage outside of their folders. */
export function ReceivedFiles() {
  const paths = footageOutsideState((state) => state.paths);
  useEffect(() => {
    void receive('named');
    return rackside().onEvent(({ name }) => {
      if (name === 'fileNamed') void receive('named');
    });
  }, []);
  if (paths.length === 0) return null;
  return <FootageOutsideDialog paths={paths} onClose={() => footageOutsideState.setState({ paths: [] })} />;
}
