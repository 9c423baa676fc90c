import type { OpenedRevision } from '../../check/index.ts';
import { printWords } from '../../words/index.ts';
import { plainName, putFile, textFile } from './zip-folder.ts';

const { names, material: words } = printWords.written;

/** Of each material what its papers say, as it was entered. */
export function putMaterialPapers({ materials }: OpenedRevision, folder: Map<string, Uint8Array>): void {
  for (const details of materials.values()) {
    const lines = [
      details.name,
      `${words.inci}: ${details.inciEu || words.missing}`,
      `${words.cas}: ${details.cas.join(', ') || words.missing}`,
      `${words.supplier}: ${details.supplier || words.missing}`,
      `${words.paper}: ${details.constituentsPaper || words.missing}`,
      `${words.supplierMost}: ${details.supplierMostPercent === null ? words.missing : `${details.supplierMostPercent} % (${details.supplierPaper})`}`,
      '',
      ...details.constituents.map(
        (one) =>
          `${one.name}${one.cas === null ? '' : ` (${one.cas})`}: ${one.leastPercent} to ${one.mostPercent} %, typical ${one.typicalPercent} %; ${one.source} [${one.confidence}]`,
      ),
    ];
    putFile(folder, `${names.materials}/${plainName(details.name)}.txt`, textFile(lines.join('\n')));
  }
}
