import type { NetworkInterfaceInfo } from 'node:os';
import { describe, expect, it } from 'vitest';
import { isNearAddress, isPrivateAddress, readOwnAddresses } from './own-addresses.ts';

const info = (address: string, more: Partial<NetworkInterfaceInfo> = {}) =>
  ({
    address,
    family: 'IPv4',
    internal: false,
    netmask: '255.255.255.0',
    mac: '02:00:00:00:00:01',
    cidr: null,
    ...more,
  }) as NetworkInterfaceInfo;

describe('the addresses of this computer', () => {
  it('are those of private networks, and its name with .local', () => {
    const interfaces = {
      lo: [info('127.0.0.1', { internal: true })],
      wifi: [info('192.168.1.20'), info('fe80::1', { family: 'IPv6' } as Partial<NetworkInterfaceInfo>)],
      cable: [info('10.0.0.5')],
    };
    expect(readOwnAddresses(interfaces, 'Bench-PC')).toEqual({
      addresses: ['192.168.1.20', '10.0.0.5'],
      name: 'bench-pc.local',
    });
  });

  it('leave out what faces the world, and name each once', () => {
    const interfaces = { a: [info('203.0.113.7'), info('10.0.0.5')], b: [info('10.0.0.5')] };
    expect(readOwnAddresses(interfaces, 'x').addresses).toEqual(['10.0.0.5']);
  });

  it('put one that a cable alone gave last', () => {
    const interfaces = { a: [info('169.254.3.4')], b: [info('172.20.0.9')] };
    expect(readOwnAddresses(interfaces, 'x').addresses).toEqual(['172.20.0.9', '169.254.3.4']);
  });

  it('may be none, without Wi-Fi', () => {
    expect(readOwnAddresses({}, 'x').addresses).toEqual([]);
  });

  it.each([
    ['bench.local', 'bench.local'],
    ['bench.example.org', 'bench.local'],
    ['localhost', null],
    ['Adas computer', null],
    ['-x', null],
    ['', null],
  ])('of a computer called “%s” have the name %s', (host, name) => {
    expect(readOwnAddresses({}, host).name).toBe(name);
  });
});

// RFC 1918, section 3, both ends of each block and what lies beside them.
describe('a private address', () => {
  it.each([
    ['10.0.0.0', true],
    ['10.255.255.255', true],
    ['9.255.255.255', false],
    ['11.0.0.0', false],
    ['172.15.255.255', false],
    ['172.16.0.0', true],
    ['172.31.255.255', true],
    ['172.32.0.0', false],
    ['192.167.255.255', false],
    ['192.168.0.0', true],
    ['192.168.255.255', true],
    ['192.169.0.0', false],
    ['169.254.0.1', true],
    ['169.255.0.1', false],
    ['127.0.0.1', false],
    ['256.1.1.1', false],
    ['10.1.1', false],
    ['10.1.1.1.', false],
    ['10.1.1.1.1', false],
    ['', false],
  ])('%s: %s', (address, isPrivate) => {
    expect(isPrivateAddress(address)).toBe(isPrivate);
  });
});

describe('who asks', () => {
  it.each([
    ['192.168.1.30', true],
    ['::ffff:192.168.1.30', true],
    ['127.0.0.1', true],
    ['127.0.0.2', true],
    ['::1', true],
    ['203.0.113.7', false],
    ['::ffff:203.0.113.7', false],
    ['2001:db8::1', false],
    [undefined, false],
  ])('from %s is near: %s', (address, isNear) => {
    expect(isNearAddress(address)).toBe(isNear);
  });
});
