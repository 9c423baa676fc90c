import { beginConnection, connectTrouble, endConnection, takeReading } from './connected-scale.ts';
import { decodeHidReport, type HidReport, layoutOf, USUAL_LAYOUT, WEIGHING_PAGE } from './decode-hid.ts';

/** What is used of WebHID, which few browsers have. */
export interface HidDevice extends EventTarget {
  readonly productName: string;
  readonly opened: boolean;
  readonly collections: readonly {
    readonly usagePage?: number;
    readonly inputReports?: readonly HidReport[];
  }[];
  open(): Promise<void>;
  close(): Promise<void>;
}
export interface HidPort extends EventTarget {
  requestDevice(options: {
    readonly filters: readonly { readonly usagePage: number }[];
  }): Promise<HidDevice[]>;
}
interface InputReport extends Event {
  readonly reportId: number;
  readonly data: DataView;
}

export const hidPort = (): HidPort | undefined => (navigator as Navigator & { readonly hid?: HidPort }).hid;

/** Asks the person which device; they must have pressed something just now. Answers how to let go of it. */
export async function connectHid(
  port: HidPort,
  now: () => number,
): Promise<(() => Promise<void>) | undefined> {
  const [device] = await port.requestDevice({ filters: [{ usagePage: WEIGHING_PAGE }] });
  if (!device) return undefined;
  try {
    if (!device.opened) await device.open();
  } catch {
    connectTrouble.write('busy');
    return undefined;
  }
  const reports = device.collections
    .filter(({ usagePage }) => usagePage === WEIGHING_PAGE)
    .flatMap(({ inputReports }) => inputReports ?? []);
  const layout = layoutOf(reports) ?? USUAL_LAYOUT;
  const hear = (event: Event) => {
    const { reportId, data } = event as InputReport;
    if (reportId !== layout.reportId) return;
    const bytes = new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
    takeReading(decodeHidReport(bytes, layout), now(), 'mark');
  };
  device.addEventListener('inputreport', hear);
  const lose = (event: Event) => {
    if ((event as Event & { readonly device?: HidDevice }).device !== device) return;
    letGo();
    endConnection('lost');
  };
  port.addEventListener('disconnect', lose);
  const letGo = () => {
    device.removeEventListener('inputreport', hear);
    port.removeEventListener('disconnect', lose);
  };
  beginConnection('hid', device.productName);
  return async () => {
    letGo();
    endConnection(null);
    await device.close();
  };
}
