/** Words of the small flat parts: caps, tabs, gussets, eyes, feet, templates. */
export const flatParts = {
  'drawings.kind.cap': 'cap plate',
  'drawings.elevation.capped': '{post}, {cap}',
  'drawings.detail.cap': 'Cap plate on a post\'s open top, {post}, cut through the middle',
  'drawings.detail.capPlate': '{mark}, ground smooth',
  'drawings.detail.capVent': '{mark}, vent: plug it after the bath',
  'weld.joint.cap-post': 'cap plate on post',
} as const;
