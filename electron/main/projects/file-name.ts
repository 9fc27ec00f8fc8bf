const LONGEST = 100;
/** Marks that some system keeps for itself in a path, and control characters. */
const FORBIDDEN = /[<>:"/\\|?*\u0000-\u001f\u007f]+/g;
/** Names that one widespread system keeps for its devices, whatever their ending. */
const TAKEN = /^(con|prn|aux|nul|com[0-9]|lpt[0-9])(\.|$)/i;

/** A text as the name of one file on any system: never a path, never hidden, never empty. */
export function fileName(text: string): string {
  const plain = text.replace(FORBIDDEN, ' ').replace(/\s+/g, ' ').replace(/^[. ]+/, '').slice(0, LONGEST).replace(/[. ]+$/, '').trim();
  return plain === '' || TAKEN.test(plain) ? `project ${plain}`.trim() : plain;
}
