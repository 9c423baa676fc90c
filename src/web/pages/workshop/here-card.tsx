import { reachWords, workshopWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { useDoor } from '../../reach/use-door.ts';

/** On a tablet or phone: what it is called, and what is found elsewhere. */
export function HereCard() {
  const device = useDoor().data?.device;
  const health = useRead('getHealth').data;
  return (
    <Card title={reachWords.here.title}>
      <p>{reachWords.here.says}</p>
      {device && <p className="soft">{reachWords.here.device(device.name)}</p>}
      {health && <p className="soft small">{workshopWords.machine.version(health.version, health.schema)}</p>}
    </Card>
  );
}
