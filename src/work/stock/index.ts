import type { UseCases } from '../use-case.ts';
import { correctLot } from './correct-lot.ts';
import { countAtOpening } from './count-at-opening.ts';
import { countLot } from './count-lot.ts';
import { getLot } from './get-lot.ts';
import { getShelf } from './get-shelf.ts';
import { getMaterial, listMaterials } from './list-materials.ts';
import { markOrdered, unmarkOrdered } from './mark-ordered.ts';
import { moveLot } from './move-lot.ts';
import { receiveGoods } from './receive-goods.ts';
import { saveMaterial } from './save-material.ts';
import { sayFirm } from './say-firm.ts';
import { setLotStatus } from './set-lot-status.ts';
import { suggestMaterials } from './suggest-materials.ts';

export { type LotView, viewLot, viewLots, viewLotsById } from './lot-view.ts';
export { type MaterialDetails, viewMaterials } from './material-view.ts';

export const stockUseCases = {
  listMaterials,
  getMaterial,
  saveMaterial,
  markOrdered,
  unmarkOrdered,
  suggestMaterials,
  getShelf,
  getLot,
  countAtOpening,
  receiveGoods,
  correctLot,
  setLotStatus,
  sayFirm,
  countLot,
  moveLot,
} satisfies UseCases<
  | 'listMaterials'
  | 'getMaterial'
  | 'saveMaterial'
  | 'markOrdered'
  | 'unmarkOrdered'
  | 'suggestMaterials'
  | 'getShelf'
  | 'getLot'
  | 'countAtOpening'
  | 'receiveGoods'
  | 'correctLot'
  | 'setLotStatus'
  | 'sayFirm'
  | 'countLot'
  | 'moveLot'
>;
