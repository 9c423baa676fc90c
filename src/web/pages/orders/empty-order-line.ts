import { makeId } from '../../api/make-id.ts';
import type { OrderLineDraft } from './order-draft.ts';

export const emptyOrderLine = (): OrderLineDraft => ({ key: makeId(), productId: '', units: '' });
