/** The part of the `dxf` package that the tests use; it brings no types of its own. */
declare module 'dxf' {
  export interface DxfPoint {
    readonly x: number;
    readonly y: number;
    readonly bulge?: number;
  }
  export interface DxfEntity {
    readonly type: string;
    readonly layer: string;
    readonly x: number;
    readonly y: number;
    readonly x2: number;
    readonly y2: number;
    readonly r: number;
    readonly start: DxfPoint;
    readonly end: DxfPoint;
    readonly startAngle: number;
    readonly endAngle: number;
    readonly corners: readonly DxfPoint[];
    readonly vertices: readonly DxfPoint[];
    readonly string: string;
    readonly textHeight: number;
    readonly block: string;
  }
  export function parseString(text: string): {
    readonly entities: readonly DxfEntity[];
    readonly blocks: readonly { readonly name: string; readonly entities: readonly DxfEntity[] }[];
    readonly header: { readonly insUnits: number };
  };
}
