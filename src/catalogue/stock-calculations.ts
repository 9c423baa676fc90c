import { firstExpiryCalculation } from './first-expiry.ts';
import { massBalanceCalculation } from './mass-balance.ts';
import { traceCalculation } from './trace.ts';

export const stockCalculations = [firstExpiryCalculation, massBalanceCalculation, traceCalculation] as const;
