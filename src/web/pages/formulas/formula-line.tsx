import { Link } from '@tanstack/react-router';
import { formulaWords } from '../../../words/index.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { State } from '../../parts/state.tsx';
import type { Formula } from './formula.ts';

/** One formula in the list: its stages at a glance. */
export const FormulaLine = ({ formula }: { readonly formula: Formula }) => (
  <>
    <ListRow>
      <Link to="/formulas/$id" params={{ id: formula.id }}>
        {formula.name}
      </Link>
      {formula.latest ? (
        <State kind={formula.latest.details.standing === 'for-sale' ? 'plain' : 'going'}>
          {formulaWords.standing[formula.latest.details.standing]}
        </State>
      ) : (
        <State kind="plain">{formulaWords.noRevision}</State>
      )}
    </ListRow>
    <p className="soft">
      {formula.code}
      {formula.latest && ` · ${formulaWords.revision(formula.latest.number)}`}
      {formula.latest?.stages.map((stage) => ` · ${stage.name} ${stage.percent} %`).join('')}
    </p>
    {!formula.latest && (
      <ListFoot>
        <span />
        <LinkButton
          to={`/formulas/${formula.id}/recipe`}
          label={`${formulaWords.firstLine}: ${formula.name}`}
        >
          {formulaWords.firstLine}
        </LinkButton>
      </ListFoot>
    )}
  </>
);
