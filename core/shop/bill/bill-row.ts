import { type Inches } from '../../base/quantity.ts';

/** A row of the bill. */
export interface BillRow {
  /** What it is: a kind of piece net of waste, `bar`, `rack-bar` and `sheet` as bought or taken from the rack, a bought part, concrete, paint. */
  readonly item: string;
  readonly section: string;
  readonly quantity: number;
  readonly unit: string;
  /** Net of the pieces as trimmed; null where the row is no net weight. */
  readonly weight: number | null;
  /** Of the whole row; null where no price is known, or where what is bought for it is a row of its own. */
  readonly price: number | null;
  readonly pieces: number;
  readonly unitPrice: number | null;
  /** Bars and sheets: length of one. */
  readonly stockLength: Inches | null;
  /** Sheets: their short side. */
  readonly stockWidth: Inches | null;
  /** Bars and sheets: weight as bought, a bar's plain end. */
  readonly boughtWeight: number | null;
}
