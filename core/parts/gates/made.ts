import { type Hardware } from '../types.ts';
import { type Member } from './member.ts';

/** What a gate is made of; not ok where no stock sheet holds its skin. */
export type Made =
  | {
    readonly ok: true;
    /** `moves`: of the leaf, which swings or slides. */
    readonly members: readonly { readonly member: Member; readonly moves: boolean }[];
    readonly hardware: readonly Hardware[];
  }
  | { readonly ok: false };
