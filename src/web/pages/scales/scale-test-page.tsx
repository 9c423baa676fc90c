import { scaleWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Loaded } from '../../parts/loaded.tsx';
import { useParam } from '../../shell/use-param.ts';
import { ScaleTestGuide } from './scale-test-guide.tsx';

/** Ten weighings of one weight, one a screen. */
export function ScaleTestPage() {
  const id = useParam('id');
  return (
    <Loaded read={useRead('getWorkshop')} title={scaleWords.above}>
      {({ scales }) => {
        const scale = scales.find((each) => each.id === id);
        return scale ? <ScaleTestGuide scale={scale} /> : null;
      }}
    </Loaded>
  );
}
