import { Bell, BellOff } from 'lucide-react';
import { stepWords } from '../../../words/index.ts';
import { useStore } from '../../api/use-store.ts';
import { Button } from '../../parts/button.tsx';
import { allowSound, forbidSound, sound } from './alarm.ts';

/** A browser rings only after a tap: this is the one that asks for it. */
export function SoundSwitch() {
  const now = useStore(sound);
  if (now === 'none') return <p className="soft">{stepWords.timer.noSound}</p>;
  const isOn = now === 'on';
  return (
    <Button isBench onPress={() => (isOn ? forbidSound() : void allowSound())}>
      {isOn ? <Bell size={26} aria-hidden /> : <BellOff size={26} aria-hidden />}
      {isOn ? stepWords.timer.soundOn : stepWords.timer.sound}
    </Button>
  );
}
