import { materialWords } from '../../../words/index.ts';
import { ListRow } from '../../parts/list-row.tsx';
import { State } from '../../parts/state.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { findGaps } from './find-gaps.ts';
import type { Material } from './material.ts';

export function MaterialLine({ material: { id, details } }: { readonly material: Material }) {
  const gaps = findGaps(details);
  return (
    <>
      <ListRow>
        <TextLink to={`/materials/${id}`}>{details.name}</TextLink>
        {gaps.length === 0 && <State kind="ready">{materialWords.complete}</State>}
      </ListRow>
      <p className="soft small">
        {[details.inciEu, details.supplier].filter((text) => text !== '').join(' · ')}
      </p>
      {gaps.length > 0 && (
        <p className="small">
          <State kind="watch">{gaps.join(', ')}</State>
        </p>
      )}
    </>
  );
}
