/** The bill of materials: what is in the facility, what is bought for it, what it costs. */
export { billRows, pricedPremix } from './bill-rows.ts';
export { type BillRow } from './bill-row.ts';
export { billColumns } from './bill-columns.ts';
export { coatedArea, type CoatedArea } from './coated-area.ts';
