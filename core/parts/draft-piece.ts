import { type Piece } from './types.ts';

/** A piece that has no mark yet. */
export type DraftPiece = Omit<Piece, 'mark' | 'signature'>;

/** The key of a piece: unique in a project and stable. */
export const pieceKey = (kind: Piece['kind'], run: string, side: string, bay: number, row: number): string =>
  `${kind}/${run}/${side}/${String(bay)}/${String(row)}`;
