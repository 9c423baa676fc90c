import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A folder on a disk of a few megabytes of its own; needs the right to mount. */
export interface SmallDisk {
  readonly folder: string;
  /** Leaves so many bytes free. */
  fillUpTo(freeBytes: number): void;
  makeRoom(): void;
  remove(): void;
}

/** Mounts one, or answers undefined where this computer does not let us: the caller then limits the file's size instead. */
export function mountSmallDisk(megabytes: number): SmallDisk | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'gramwright-disk-'));
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder]);
  if (mounted.status !== 0) {
    rmSync(folder, { recursive: true });
    return undefined;
  }
  const ballast = join(folder, 'ballast');
  return {
    folder,
    fillUpTo(freeBytes) {
      rmSync(ballast, { force: true });
      const { bavail, bsize } = statfsSync(folder);
      writeFileSync(ballast, Buffer.alloc(Math.max(0, bavail * bsize - freeBytes)));
    },
    makeRoom: () => rmSync(ballast, { force: true }),
    remove() {
      execFileSync('umount', [folder]);
      rmSync(folder, { recursive: true });
    },
  };
}
