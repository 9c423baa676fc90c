import { beginConnection, connectTrouble, endConnection, takeReading } from './connected-scale.ts';
import { decodeLine } from './decode-line.ts';
import { patternOf, type ReaderSettings } from './reader-settings.ts';
import { makeLineSplitter } from './split-lines.ts';

/** What is used of Web Serial, which few browsers have. */
export interface SerialPort {
  readonly readable: ReadableStream<Uint8Array> | null;
  open(options: {
    readonly baudRate: number;
    readonly dataBits: 7 | 8;
    readonly parity: 'none' | 'even' | 'odd';
    readonly stopBits: 1 | 2;
  }): Promise<void>;
  close(): Promise<void>;
}
export interface SerialPorts {
  requestPort(): Promise<SerialPort>;
}

export const serialPorts = (): SerialPorts | undefined =>
  (navigator as Navigator & { readonly serial?: SerialPorts }).serial;

/** Asks the person which port; they must have pressed something just now. Answers how to let go of it. */
export async function connectSerial(
  ports: SerialPorts,
  settings: ReaderSettings,
  name: string,
  now: () => number,
): Promise<(() => Promise<void>) | undefined> {
  const port = await ports.requestPort();
  const { baudRate, dataBits, parity, stopBits } = settings;
  try {
    await port.open({ baudRate, dataBits, parity, stopBits });
  } catch {
    connectTrouble.write('busy');
    return undefined;
  }
  const reader = port.readable?.getReader();
  if (!reader) {
    connectTrouble.write('busy');
    return undefined;
  }
  beginConnection('serial', name);
  let isLetGo = false;
  const pattern = patternOf(settings);
  const feed = makeLineSplitter((line) => takeReading(decodeLine(line, pattern), now(), settings.settlesBy));
  const listening = listen(reader, feed).then((isLost) => {
    if (isLost && !isLetGo) endConnection('lost');
  });
  return async () => {
    isLetGo = true;
    endConnection(null);
    await reader.cancel();
    await listening;
    reader.releaseLock();
    await port.close();
  };
}

/** Until the port ends or is pulled out; whether it was lost. */
async function listen(
  reader: ReadableStreamDefaultReader<Uint8Array>,
  feed: (piece: string) => void,
): Promise<boolean> {
  // Scales write plain ASCII; a byte of noise must not stop the line.
  const text = new TextDecoder('latin1');
  try {
    for (;;) {
      const { value, done } = await reader.read();
      if (done) return true;
      feed(text.decode(value, { stream: true }));
    }
  } catch {
    return true;
  }
}
