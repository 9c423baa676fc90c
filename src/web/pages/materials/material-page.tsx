import { materialWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import { WriteToSupplier } from '../formulas/letters-dialog.tsx';
import { findGaps } from './find-gaps.ts';
import { MaterialEditor } from './material-editor.tsx';

export function MaterialPage() {
  const id = useParam('id');
  return (
    <Loaded key={id} read={useRead('getMaterial', { params: { id } })} title={materialWords.title}>
      {(material) => (
        <Page
          title={material.details.name}
          above={materialWords.title}
          says={material.details.name}
          soft={<Gaps gaps={findGaps(material.details)} />}
          actions={
            <>
              <LinkButton to={`/shelf/receive/${id}`}>{materialWords.form.receive}</LinkButton>
              {material.details.kind === 'ingredient' && <WriteToSupplier of="material" id={id} />}
            </>
          }
          isNarrow
        >
          <MaterialEditor first={material.details} material={material} />
        </Page>
      )}
    </Loaded>
  );
}

const Gaps = ({ gaps }: { readonly gaps: readonly string[] }) =>
  gaps.length === 0 ? (
    <State kind="ready">{materialWords.complete}</State>
  ) : (
    <State kind="watch">{gaps.join(', ')}</State>
  );
