import { Link } from '@tanstack/react-router';
import { shelfWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { showAmount } from '../../show/show-amount.ts';
import { namePlaces } from './name-places.ts';

const { openingCount: words } = shelfWords;

/** What was found on the shelf so far, the last one first: who counts a whole shelf must see where they are. */
export function CountedSoFar() {
  const { data } = useRead('getShelf');
  const places = useRead('getWorkshop').data?.places ?? [];
  if (!data) return null;
  const found = data.items
    .flatMap(({ lots }) => lots)
    .filter(({ foundAtOpening }) => foundAtOpening)
    .sort((one, other) => other.number.localeCompare(one.number, 'en', { numeric: true }));
  return (
    <Card title={words.soFar} aside={words.count(found.length)} isFlush>
      <List rows={found} keyOf={({ id }) => id} empty={words.noneYet}>
        {({ id, number, itemName, cameIn, unit, placeIds }) => (
          <ListRow>
            <Link to="/shelf/lots/$id" params={{ id }}>
              {number} {itemName}
            </Link>
            <span>
              {showAmount(cameIn, unit)} <span className="soft">{namePlaces(placeIds, places)}</span>
            </span>
          </ListRow>
        )}
      </List>
    </Card>
  );
}
