/** The bill of materials: what is in the facility, what is bought for it, what it costs. */
export { billRows, type BillRow } from './bill-rows.ts';
export { billColumns } from './bill-columns.ts';
export { coatedArea, type CoatedArea } from './coated-area.ts';
