import { TriangleAlert } from 'lucide-react';
import type { Caution } from '../../engine/exercises/caution.ts';

/** Cautions that apply here, always visible, never to be dismissed. */
export function CautionNotice({ cautions, why }: { readonly cautions: readonly Caution[]; readonly why: string }) {
  if (cautions.length === 0) return null;
  return (
    <aside className="caution" aria-label="Cautions">
      <TriangleAlert aria-hidden="true" />
      <div>
        <strong>{why}</strong>
        {cautions.map((caution) => (
          <p key={caution.id}>{caution.text}</p>
        ))}
      </div>
    </aside>
  );
}
