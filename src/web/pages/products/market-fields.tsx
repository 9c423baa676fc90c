import { saleCountries } from '../../../catalogue/index.ts';
import { productWords, termWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { CheckBoxes } from '../../parts/check-boxes.tsx';
import { Select } from '../../parts/select.tsx';
import { nameCountry } from './name-country.ts';
import type { ProductDraft } from './product-draft.ts';

const { form: words } = productWords;
const MARKETS = Object.entries(termWords.market).map(([id, name]) => ({ id, name }));
const COUNTRIES = saleCountries
  .map(({ country }) => ({ id: country, name: nameCountry(country) }))
  .sort((one, other) => one.name.localeCompare(other.name, 'en-GB'));
const SCENTS = Object.entries(words.scents).map(([id, name]) => ({ id, name }));

/** Where it is sold, and what that leaves to be said. */
export const MarketFields = ({ editing: { draft, set } }: { readonly editing: Editing<ProductDraft> }) => (
  <>
    <CheckBoxes
      title={words.markets}
      choices={MARKETS}
      chosen={draft.markets}
      onChange={(markets) => set('markets')(markets as ProductDraft['markets'])}
    />
    {draft.markets.includes('US') && <p className="soft">{words.usNote}</p>}
    {draft.markets.includes('EU') && (
      <CheckBoxes
        title={words.saleCountries}
        choices={COUNTRIES}
        chosen={draft.saleCountries}
        onChange={set('saleCountries')}
      />
    )}
    <Select
      label={words.scent}
      where="details.scentOnLabel"
      value={draft.scentOnLabel}
      onChange={(scent) => set('scentOnLabel')(scent as ProductDraft['scentOnLabel'])}
      choices={SCENTS}
      hint={words.scentHint}
    />
  </>
);
