import type { UseCases } from '../use-case.ts';
import { getOrder, listOrders, previewPromise } from './answer-orders.ts';
import { cancelOrder } from './cancel-order.ts';
import { saveTracking, takeParcelBack } from './correct-parcel.ts';
import { eraseCustomer, listCustomers, saveCustomer } from './customers.ts';
import { dispatchOrder } from './dispatch-order.ts';
import { listProducts } from './list-products.ts';
import { getPackingSlip, getPickList } from './papers.ts';
import { reserveOrder } from './reserve-order.ts';
import { saveOrder } from './save-order.ts';
import { saveProduct } from './save-product.ts';

export { needsOfOpenOrders, type OpenNeeds } from './needs.ts';

export const orderUseCases = {
  listProducts,
  saveProduct,
  listCustomers,
  saveCustomer,
  eraseCustomer,
  listOrders,
  getOrder,
  previewPromise,
  saveOrder,
  cancelOrder,
  reserveOrder,
  dispatchOrder,
  saveTracking,
  takeParcelBack,
  getPickList,
  getPackingSlip,
} satisfies UseCases<
  | 'listProducts'
  | 'saveProduct'
  | 'listCustomers'
  | 'saveCustomer'
  | 'eraseCustomer'
  | 'listOrders'
  | 'getOrder'
  | 'previewPromise'
  | 'saveOrder'
  | 'cancelOrder'
  | 'reserveOrder'
  | 'dispatchOrder'
  | 'saveTracking'
  | 'takeParcelBack'
  | 'getPickList'
  | 'getPackingSlip'
>;
