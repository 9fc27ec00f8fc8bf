/** How long a browser may take to begin a download before its bytes are let go. */
const HELD = 60_000;

/** Hands bytes to the browser as a file to keep. */
export function download(bytes: Uint8Array<ArrayBuffer>, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => { URL.revokeObjectURL(address); }, HELD);
}
