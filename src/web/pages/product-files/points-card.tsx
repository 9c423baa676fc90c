import { useState } from 'react';
import { productFileWords, sayDecimal } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { type Point, PointDialog } from './point-dialog.tsx';

const { worksheet: words } = productFileWords;

/** The doses from which margins are reckoned, as somebody typed them in from a study. */
export function PointsCard() {
  const points = useRead('listPointsOfDeparture').data ?? [];
  const [edited, setEdited] = useState<Point | 'new' | null>(null);
  return (
    <Card title={words.points} anchor="points" isFlush>
      <List rows={points} keyOf={({ id }) => id} empty={words.pointsNone}>
        {(point) => (
          <>
            <ListRow>
              <strong>{point.details.name}</strong>
              <Button label={words.changeOf(point.details.name)} onPress={() => setEdited(point)}>
                {words.change}
              </Button>
            </ListRow>
            <p className="soft">
              {words.line(
                sayDecimal(point.details.milligramsPerKgDay),
                words.routes[point.details.route],
                point.details.source,
              )}
            </p>
          </>
        )}
      </List>
      <ListFoot>
        <span className="soft">{words.pointsSoft}</span>
        <Button onPress={() => setEdited('new')}>{words.add}</Button>
      </ListFoot>
      {edited !== null && (
        <PointDialog point={edited === 'new' ? null : edited} onClose={() => setEdited(null)} />
      )}
    </Card>
  );
}
