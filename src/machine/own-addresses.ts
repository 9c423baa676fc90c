import { hostname, type NetworkInterfaceInfo, networkInterfaces } from 'node:os';

/** By what the devices of the workshop's own network call this computer. */
export interface OwnAddresses {
  /** IPv4, of private networks only, in order. */
  readonly addresses: readonly string[];
  /** As devices look it up without a name server (multicast DNS, RFC 6762); null where this computer has no such name. */
  readonly name: string | null;
}

type Block = readonly [first: string, bits: number];

/** RFC 1918, section 3: networks that nobody outside can reach. RFC 3927: two computers on one cable. */
export const PRIVATE_BLOCKS: readonly Block[] = [
  ['10.0.0.0', 8],
  ['172.16.0.0', 12],
  ['192.168.0.0', 16],
  ['169.254.0.0', 16],
];
const LOOPBACK: Block = ['127.0.0.0', 8];

const FOUR_NUMBERS = /^(?:(?:25[0-5]|2[0-4]\d|1\d\d|[1-9]?\d)(?:\.(?!$)|$)){4}$/;

const numberOf = (address: string): number =>
  address.split('.').reduce((sum, part) => sum * 256 + Number(part), 0);

const isIn = (address: string, [first, bits]: Block): boolean => {
  const size = 2 ** (32 - bits);
  return Math.floor(numberOf(address) / size) === Math.floor(numberOf(first) / size);
};

export const isPrivateAddress = (address: string): boolean =>
  FOUR_NUMBERS.test(address) && PRIVATE_BLOCKS.some((block) => isIn(address, block));

/** Who asks sits at this computer or in a private network. Node writes IPv4 as `::ffff:10.0.0.5` where a socket takes both. */
export function isNearAddress(address: string | undefined): boolean {
  const plain = (address ?? '').replace(/^::ffff:/, '');
  return plain === '::1' || isPrivateAddress(plain) || (FOUR_NUMBERS.test(plain) && isIn(plain, LOOPBACK));
}

/** One label of a host name (RFC 1123, section 2.1). */
const LABEL = /^[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?$/;

function localName(host: string): string | null {
  const label = host.toLowerCase().split('.')[0] ?? '';
  return LABEL.test(label) && label !== 'localhost' ? `${label}.local` : null;
}

type Interfaces = NodeJS.Dict<NetworkInterfaceInfo[]>;

/** What this computer is called on its networks now: it changes with the Wi-Fi, and with what a router gives out. */
export function readOwnAddresses(
  interfaces: Interfaces = networkInterfaces(),
  host: string = hostname(),
): OwnAddresses {
  const found = Object.values(interfaces)
    .flatMap((each) => each ?? [])
    .filter(({ family, internal, address }) => family === 'IPv4' && !internal && isPrivateAddress(address));
  const addresses = [...new Set(found.map(({ address }) => address))];
  return { addresses: addresses.sort((one, other) => rank(one) - rank(other)), name: localName(host) };
}

/** The address that two computers gave themselves is of use only where there is no other. */
const rank = (address: string): number => (address.startsWith('169.254.') ? 1 : 0);
