import { useRead } from './use-read.ts';

/** Where the workshop's clock stands: what day it is at the bench, wherever the page is read. */
export const useTimeZone = (): string | undefined => useRead('getWorkshop').data?.details?.timeZone;
