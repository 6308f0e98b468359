import { type DragEvent, useState } from 'react';
import { move } from './paragraphActs.ts';

/** Dragging paragraphs to another place by their grips. */
export type ParagraphDrag = {
  /** The paragraph that the dragged one would be put after. */
  readonly over: string | null;
  readonly source: (id: string) => {
    readonly draggable: true;
    readonly onDragStart: (event: DragEvent) => void;
    readonly onDragEnd: () => void;
  };
  readonly target: (id: string) => {
    readonly onDragOver: (event: DragEvent) => void;
    readonly onDrop: (event: DragEvent) => void;
  };
};

/** A paragraph is put after the one that it is dropped on. */
export function useParagraphDrag(sessionId: string): ParagraphDrag {
  const [dragged, setDragged] = useState<string | null>(null);
  const [over, setOver] = useState<string | null>(null);
  const end = (): void => {
    setDragged(null);
    setOver(null);
  };
  return {
    over,
    source: (id) => ({
      draggable: true,
      onDragStart: (event) => {
        event.dataTransfer.effectAllowed = 'move';
        event.dataTransfer.setData('text/plain', '');
        setDragged(id);
      },
      onDragEnd: end,
    }),
    target: (id) => ({
      onDragOver: (event) => {
        if (dragged === null || dragged === id) return;
        event.preventDefault();
        setOver(id);
      },
      onDrop: (event) => {
        if (dragged === null) return;
        event.preventDefault();
        if (dragged !== id) void move(sessionId, dragged, { after: id });
        end();
      },
    }),
  };
}
