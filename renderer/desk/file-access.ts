/** File access that some browsers have and the types of the page leave out: a hold of a file that a person chose. */

export type FileHandle = FileSystemFileHandle & {
  queryPermission?(how: { readonly mode: 'read' | 'readwrite' }): Promise<PermissionState>;
  requestPermission?(how: { readonly mode: 'read' | 'readwrite' }): Promise<PermissionState>;
};

interface FileKinds {
  readonly description: string;
  readonly accept: Readonly<Record<string, readonly string[]>>;
}

export interface FileAccess {
  showOpenFilePicker(options: { readonly types: readonly FileKinds[]; readonly multiple: false }): Promise<FileHandle[]>;
  showSaveFilePicker(options: { readonly types: readonly FileKinds[]; readonly suggestedName: string }): Promise<FileHandle>;
}

/** The browser's file access, or null where it has none. */
export function fileAccess(): FileAccess | null {
  const page = window as unknown as Partial<FileAccess>;
  return page.showOpenFilePicker !== undefined && page.showSaveFilePicker !== undefined ? (window as unknown as FileAccess) : null;
}

/** Whether a file may be read or written, the person being asked where the browser wants it. */
export async function isAllowed(handle: FileHandle, mode: 'read' | 'readwrite'): Promise<boolean> {
  if (handle.queryPermission === undefined || handle.requestPermission === undefined) return true;
  return (await handle.queryPermission({ mode })) === 'granted' || (await handle.requestPermission({ mode })) === 'granted';
}

/** Whether a person shut a dialog of the browser without choosing. */
export const isShut = (error: unknown): boolean => error instanceof DOMException && error.name === 'AbortError';
