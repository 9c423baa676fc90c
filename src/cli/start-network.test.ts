import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { endCli, runCli, startCli } from '../../test/workshop/run-cli.ts';
import { freePort } from '../../test/workshop/start-server.ts';
import { networkFolder, readNetworkChoice } from '../machine/index.ts';

const root = mkdtempSync(join(tmpdir(), 'gramwright-network-start-'));
afterAll(() => rmSync(root, { recursive: true }));

describe('gramwright start, for tablets and phones', () => {
  it.each(['0', '80', '1023', '65536', 'x', '-1'])('takes no port %s for the network', async (port) => {
    const { status, stderr } = await runCli(['start', '--folder', root, `--network-port=${port}`]);
    expect(status).toBe(1);
    expect(stderr).toContain(`“${port}” is no port for the network`);
  });

  it('opens the network where it is asked for, remembers it, and answers plainly on this computer alone', async () => {
    const folder = join(root, 'on');
    const port = await freePort();
    const choice = () => readNetworkChoice(networkFolder(join(folder, 'workshop.gramwright')));
    const first = await startCli(['--folder', folder]);
    expect(choice()).toEqual({ isOn: false, port: null });
    await endCli(first.child);
    const asked = await startCli(['--folder', folder, `--network-port=${port}`]);
    await expect.poll(() => choice(), { timeout: 20_000 }).toEqual({ isOn: true, port });
    expect(asked.address).toMatch(/^http:\/\/127\.0\.0\.1:/);
    await endCli(asked.child);
    const again = await startCli(['--folder', folder]);
    const reach = async () => {
      const { network } = (await (await fetch(`${again.address}/api/reach`)).json()) as { network: object };
      return network;
    };
    await expect.poll(reach, { timeout: 20_000 }).toMatchObject({ isOn: true, port });
    await endCli(again.child);
  });
});
