/** Handles: hexadecimal names of everything in the file, each given once. */

export interface Handles {
  next(): string;
  /** Above every handle given so far: $HANDSEED. */
  seed(): string;
}

/** Counts from 1. */
export function countHandles(): Handles {
  let last = 0;
  const name = (n: number): string => n.toString(16).toUpperCase();
  return {
    next: () => {
      last += 1;
      return name(last);
    },
    seed: () => name(last + 1),
  };
}

/** The nine tables, in the order in which they stand. */
export const TABLES = ['VPORT', 'LTYPE', 'LAYER', 'STYLE', 'VIEW', 'UCS', 'APPID', 'DIMSTYLE', 'BLOCK_RECORD'] as const;
export type TableName = (typeof TABLES)[number];

/** Handles of what other things point at. */
export interface Fixed {
  readonly table: Readonly<Record<TableName, string>>;
  readonly modelRecord: string;
  readonly paperRecord: string;
  readonly modelLayout: string;
  readonly paperLayout: string;
  readonly textStyle: string;
  /** The plot style that every layer has. */
  readonly plotStyle: string;
}

/** Gives out the handles that other things point at. */
export function fixHandles(handles: Handles): Fixed {
  const table = {} as Record<TableName, string>;
  for (const name of TABLES) table[name] = handles.next();
  return {
    table,
    modelRecord: handles.next(),
    paperRecord: handles.next(),
    modelLayout: handles.next(),
    paperLayout: handles.next(),
    textStyle: handles.next(),
    plotStyle: handles.next(),
  };
}
