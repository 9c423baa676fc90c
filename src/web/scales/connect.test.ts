/** Simulated devices: what a browser would tell of one, driven by hand. */
import { afterEach, describe, expect, it } from 'vitest';
import { connectedScale, connectTrouble, endConnection, takeShown } from './connected-scale.ts';
import { connectHid, type HidDevice, type HidPort } from './hid-scale.ts';
import { USUAL_SETTINGS } from './reader-settings.ts';
import { connectSerial, type SerialPort } from './serial-scale.ts';

afterEach(() => endConnection(null));

const gramsNow = () => connectedScale.read()?.settling.reading;
const soon = () => new Promise((resolve) => setTimeout(resolve, 0));

class SimulatedHid extends EventTarget implements HidDevice {
  productName = 'Bench scale, simulated';
  opened = false;
  collections = [{ usagePage: 0x8d }];
  async open() {
    this.opened = true;
  }
  async close() {
    this.opened = false;
  }
  tell(...bytes: number[]) {
    const event = Object.assign(new Event('inputreport'), {
      reportId: 3,
      data: new DataView(Uint8Array.from(bytes).buffer),
    });
    this.dispatchEvent(event);
  }
}
class SimulatedHidPort extends EventTarget implements HidPort {
  readonly devices: HidDevice[];
  constructor(devices: HidDevice[]) {
    super();
    this.devices = devices;
  }
  async requestDevice() {
    return this.devices;
  }
}

describe('a scale on a simulated HID port', () => {
  it('tells its readings, moving and settled, until it is let go', async () => {
    const device = new SimulatedHid();
    const letGo = await connectHid(new SimulatedHidPort([device]), () => 0);
    expect(connectedScale.read()).toMatchObject({ kind: 'hid', name: 'Bench scale, simulated' });
    device.tell(3, 2, 0, 80, 0);
    expect(gramsNow()).toMatchObject({ grams: '80', isStable: false });
    device.tell(4, 2, 0xff, 0x2d, 0x03);
    expect(gramsNow()).toMatchObject({ grams: '81.3', isStable: true });
    await letGo?.();
    device.tell(4, 2, 0, 9, 0);
    expect(connectedScale.read()).toBeNull();
    expect([device.opened, connectTrouble.read()]).toEqual([false, null]);
  });

  it('has its reading taken once, and again when it moved', async () => {
    const device = new SimulatedHid();
    const clock = { ms: 0 };
    const letGo = await connectHid(new SimulatedHidPort([device]), () => clock.ms);
    expect(takeShown(0)).toBeNull();
    device.tell(4, 2, 0, 80, 0);
    expect([takeShown(10), takeShown(20)]).toEqual(['80', null]);
    device.tell(3, 2, 0, 90, 0);
    expect(takeShown(30)).toBeNull();
    device.tell(4, 2, 0, 80, 0);
    expect(takeShown(40)).toBe('80');
    await letGo?.();
    expect(takeShown(50)).toBeNull();
  });

  it('that is pulled out is lost, and that is said', async () => {
    const device = new SimulatedHid();
    const port = new SimulatedHidPort([device]);
    await connectHid(port, () => 0);
    port.dispatchEvent(Object.assign(new Event('disconnect'), { device: new SimulatedHid() }));
    expect(connectedScale.read()).not.toBeNull();
    port.dispatchEvent(Object.assign(new Event('disconnect'), { device }));
    expect([connectedScale.read(), connectTrouble.read()]).toEqual([null, 'lost']);
  });

  it('is none where the person chose none, or another program has it', async () => {
    expect(await connectHid(new SimulatedHidPort([]), () => 0)).toBeUndefined();
    const taken = Object.assign(new SimulatedHid(), {
      open: async () => {
        throw new Error('in use');
      },
    });
    expect(await connectHid(new SimulatedHidPort([taken]), () => 0)).toBeUndefined();
    expect([connectedScale.read(), connectTrouble.read()]).toEqual([null, 'busy']);
  });
});

function simulatedPort() {
  let send: ReadableStreamDefaultController<Uint8Array> | undefined;
  const readable = new ReadableStream<Uint8Array>({
    start(controller) {
      send = controller;
    },
  });
  const opened: object[] = [];
  const port: SerialPort = {
    readable,
    open: async (options) => {
      opened.push(options);
    },
    close: async () => {
      opened.pop();
    },
  };
  const write = async (text: string) => {
    send?.enqueue(new TextEncoder().encode(text));
    await soon();
  };
  const pull = async () => {
    send?.error(new Error('gone'));
    await soon();
  };
  return { port, write, opened, pull };
}

describe('a scale on a simulated serial port', () => {
  it('is opened as set, and settles after three equal lines', async () => {
    const { port, write, opened } = simulatedPort();
    const settings = { ...USUAL_SETTINGS, baudRate: 4800, dataBits: 7, parity: 'even' } as const;
    const letGo = await connectSerial({ requestPort: async () => port }, settings, 'Serial', () => 0);
    expect(opened).toEqual([{ baudRate: 4800, dataBits: 7, parity: 'even', stopBits: 1 }]);
    await write('  12.3');
    await write('0 g\r\n 12.30 g\r\n');
    expect(gramsNow()).toMatchObject({ grams: '12.3', isStable: false });
    await write(' 12.30 g\r\n');
    expect(gramsNow()).toMatchObject({ grams: '12.3', isStable: true });
    await letGo?.();
    expect([connectedScale.read(), opened]).toEqual([null, []]);
  });

  it('that is pulled out is lost', async () => {
    const { port, pull } = simulatedPort();
    await connectSerial({ requestPort: async () => port }, USUAL_SETTINGS, 'Serial', () => 0);
    await pull();
    expect([connectedScale.read(), connectTrouble.read()]).toEqual([null, 'lost']);
  });
});
