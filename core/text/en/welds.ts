/** Words of welds. */
export const welds = {
  'weld.gap': 'gap {gap}',
  'weld.flush': 'grind flush, cattle side',
  'weld.sized': '{kind} {size}',
  'weld.kind.fillet': 'fillet',
  'weld.kind.square': 'square groove',
  'weld.kind.flare-bevel': 'flare-bevel groove',
  'weld.kind.flare-vee': 'flare-vee groove',
  'package.welds': 'Welds',
} as const;
