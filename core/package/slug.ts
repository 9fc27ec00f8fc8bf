const LONGEST = 60;
/** Names that one widespread system keeps for its devices, whatever their ending. */
const TAKEN = /^(con|prn|aux|nul|com[0-9]|lpt[0-9])$/;

/** A title as a file name: small ASCII letters, figures and hyphens, on any system; `project` where nothing of it is left. */
export function slug(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, (gap) => (/^[\u0300-\u036f]+$/.test(gap) ? '' : '-'))
    .toLowerCase()
    .replace(/^-+|-+$/g, '')
    .slice(0, LONGEST)
    .replace(/-+$/, '');
  if (plain === '') return 'project';
  return TAKEN.test(plain) ? `${plain}-project` : plain;
}
