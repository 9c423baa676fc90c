import { done } from '../../core/problem.ts';
import { exportAsCsvZip, exportAsJson } from '../../storage/index.ts';
import { workshopToday } from '../local-date.ts';
import type { UseCase } from '../use-case.ts';

export const exportJson: UseCase<'exportJson'> = async ({ storage, machine }) =>
  done({ ...(await exportAsJson(storage)), exportedAt: machine.now() });

export const exportCsv: UseCase<'exportCsv'> = async (context) =>
  done({
    fileName: `gramwright-export-${await workshopToday(context)}.zip`,
    bytes: await exportAsCsvZip(context.storage, context.machine.now()),
  });
