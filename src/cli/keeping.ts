import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { problem } from '../core/problem.ts';
import { realMachine } from '../machine/index.ts';
import { cliWords } from '../words/index.ts';
import { type Paper, restoreWorkshop } from '../work/index.ts';
import { askWorkshop } from './ask-workshop.ts';
import { sayProblems } from './say-problems.ts';

const print = (text: string): void => {
  process.stdout.write(`${text}\n`);
};

export async function backup(folder: string, to: string | undefined): Promise<number> {
  const body = to === undefined ? {} : { folder: resolve(to) };
  const made = await askWorkshop(folder, 'backUp', { body });
  if (!made.ok) return sayProblems(made.problems);
  print(cliWords.backedUp(made.value.file, made.value.bytes));
  return 0;
}

export async function restore(folder: string, file: string): Promise<number> {
  const restored = await restoreWorkshop(folder, file, realMachine);
  if (!restored.ok) return sayProblems(restored.problems);
  print(cliWords.restored(restored.value.file, restored.value.keptAside));
  return 0;
}

/** Status 1 where anything was found wrong, so that a script notices. */
export async function checkUp(folder: string): Promise<number> {
  const looked = await askWorkshop(folder, 'checkUp');
  if (!looked.ok) return sayProblems(looked.problems);
  for (const { what, isSound, detail } of looked.value.findings)
    print(cliWords.finding(what, isSound, detail));
  return looked.value.isSound ? 0 : 1;
}

export async function exportAll(folder: string, as: 'json' | 'csv', to: string | undefined): Promise<number> {
  const bytes = as === 'json' ? await exportJson(folder) : await exportCsv(folder);
  if (typeof bytes === 'number') return bytes;
  const today = realMachine.now().slice(0, 10);
  const file = resolve(to ?? `gramwright-export-${today}.${as === 'json' ? 'json' : 'zip'}`);
  try {
    writeFileSync(file, bytes, { flag: 'wx', mode: 0o600 });
  } catch (error) {
    return sayProblems([
      problem('export-not-written', file, { found: String((error as NodeJS.ErrnoException).code) }),
    ]);
  }
  print(cliWords.exported(file, bytes.length));
  return 0;
}

async function exportJson(folder: string): Promise<Uint8Array | number> {
  const all = await askWorkshop(folder, 'exportJson');
  return all.ok ? Buffer.from(`${JSON.stringify(all.value)}\n`) : sayProblems(all.problems);
}

async function exportCsv(folder: string): Promise<Uint8Array | number> {
  const all = await askWorkshop(folder, 'exportCsv');
  return all.ok ? (all.value as Paper).bytes : sayProblems(all.problems);
}
