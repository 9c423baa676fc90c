import { kept } from '../../api/kept.ts';
import { makeStore } from '../../api/make-store.ts';

/** A browser gives no sound before somebody has tapped: `wanted` waits for that tap. */
export type Sound = 'off' | 'wanted' | 'on' | 'none';

const hasSound = (): boolean => 'AudioContext' in globalThis;
const first = (): Sound => {
  if (!hasSound()) return 'none';
  return kept.read('sound') === 'on' ? 'wanted' : 'off';
};

export const sound = makeStore<Sound>('off');

let audio: AudioContext | undefined;

/** Three tones that carry over a mixer (common practice, no source). */
const TONES = { hertz: [880, 660, 880], seconds: 0.35, gap: 0.12 } as const;

function play(count: number): void {
  if (!audio) return;
  for (const [index, hertz] of TONES.hertz.slice(0, count).entries()) {
    const from = audio.currentTime + index * (TONES.seconds + TONES.gap);
    const tone = new OscillatorNode(audio, { type: 'triangle', frequency: hertz });
    const loudness = new GainNode(audio, { gain: 0 });
    // Up and down within a hundredth of a second: a sudden edge clicks.
    loudness.gain.setValueAtTime(0, from);
    loudness.gain.linearRampToValueAtTime(0.6, from + 0.01);
    loudness.gain.setValueAtTime(0.6, from + TONES.seconds - 0.05);
    loudness.gain.linearRampToValueAtTime(0, from + TONES.seconds);
    tone.connect(loudness).connect(audio.destination);
    tone.start(from);
    tone.stop(from + TONES.seconds);
  }
}

/** After a tap; one tone tells how loud it is. */
export async function allowSound(): Promise<void> {
  try {
    audio ??= new AudioContext();
    await audio.resume();
    play(1);
    sound.write('on');
    kept.write('sound', 'on');
  } catch {
    // No loudspeaker, or it is taken: picture, word and vibration are left.
    sound.write('none');
  }
}

export function forbidSound(): void {
  sound.write('off');
  kept.write('sound', null);
}

const VIBRATES_MS = [300, 150, 300, 150, 300];

export function ring(): void {
  if (sound.read() === 'on') play(TONES.hertz.length);
  if ('vibrate' in navigator) navigator.vibrate(VIBRATES_MS);
}

/** What was wanted on this tablet before is on again with the first tap. */
export function listenForTap(): () => void {
  sound.write(sound.read() === 'on' ? 'on' : first());
  if (sound.read() !== 'wanted') return () => undefined;
  const allow = () => void allowSound();
  addEventListener('pointerdown', allow, { once: true });
  return () => removeEventListener('pointerdown', allow);
}
