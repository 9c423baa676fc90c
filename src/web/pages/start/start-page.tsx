import { startWords } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Problems } from '../../parts/problems.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { Page } from '../../shell/page.tsx';
import { OwnWorkshopForm } from './own-workshop-form.tsx';

/** The first start: an example to look round in, or one's own workshop. */
export function StartPage() {
  const begin = useWrite('beginWorkshop');
  return (
    <Page title={startWords.title} says={startWords.says} soft={startWords.soft}>
      <SideBySide>
        <Card title={startWords.own.title}>
          <OwnWorkshopForm />
        </Card>
        <Card title={startWords.example.title}>
          <p>{startWords.example.says}</p>
          <Problems problems={begin.problems} />
          <div>
            <Button isBusy={begin.isBusy} onPress={() => void begin.write({ body: { with: 'example' } })}>
              {startWords.example.open}
            </Button>
          </div>
        </Card>
      </SideBySide>
    </Page>
  );
}
