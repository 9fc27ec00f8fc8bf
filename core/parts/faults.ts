/** What in a brief cannot be made of the shop's stock. Each is told once for a place in the file. */
import { inches } from '../base/quantity.ts';
import { pathText } from '../brief/path-fault.ts';
import { type Brief, type Fault } from '../brief/types.ts';
import { printLength } from '../units/index.ts';
import { type Fence } from '../layout/index.ts';

/** Gathers faults: of one code at one place the first is kept. */
export class FaultList {
  readonly #faults = new Map<string, Fault>();
  readonly #brief: Brief;

  constructor(brief: Brief) {
    this.#brief = brief;
  }

  get all(): readonly Fault[] {
    return [...this.#faults.values()];
  }

  bayOverStock(fence: Fence, length: number, stock: number): void {
    const params = { length: this.#print(length), section: fence.brief.rail.name, stock: this.#print(stock) };
    this.#add(`${fence.brief.path}.postSpacing`, 'fault.bay-over-stock', fence, params);
  }

  bayShort(fence: Fence, left: number, least: number): void {
    this.#add(fence.lengthPath, 'fault.bay-short', fence, { left: this.#print(left), least: this.#print(least) });
  }

  sharedPostThin(fence: Fence, post: string): void {
    this.#add(`${fence.brief.path}.rail`, 'fault.shared-post-thin', fence, { rail: fence.brief.rail.name, post });
  }

  skinOverStock(fence: Fence, length: number, height: number, most: number): void {
    const params = { length: this.#print(length), height: this.#print(height), most: this.#print(most) };
    this.#add(`${fence.brief.path}.postSpacing`, 'fault.skin-over-stock', fence, params);
  }

  skinTooTall(fence: Fence, height: number): void {
    this.#add(`${fence.brief.path}.rails`, 'fault.skin-too-tall', fence, { height: this.#print(height) });
  }

  pieceOverStock(piece: { readonly mark: string; readonly kind: string; readonly run: string; readonly side: string; readonly section: string }, length: number, stock: number): void {
    const { mark, kind, run, side, section } = piece;
    this.#put(pathText(['shop', 'stock', section]), 'fault.piece-over-stock', { mark, kind, run, side, section, length: this.#print(length), stock: this.#print(stock) });
  }

  gateSkin(path: string): void {
    this.#put(path, 'fault.gate-skin', {});
  }

  #print(length: number): string {
    return printLength(inches(length), this.#brief.units, 'inches');
  }

  #add(path: string, code: Fault['code'], fence: Fence, params: Fault['params']): void {
    this.#put(path, code, { run: fence.run, side: fence.side, ...params });
  }

  #put(path: string, code: Fault['code'], params: Fault['params']): void {
    const key = `${path} ${code}`;
    if (!this.#faults.has(key)) this.#faults.set(key, { path, code, params });
  }
}
