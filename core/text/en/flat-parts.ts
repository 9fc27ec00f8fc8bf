/** Words of the small flat parts: caps, tabs, gussets, eyes, feet, templates. */
export const flatParts = {
  'drawings.kind.form': 'form template',
  'drawings.kind.cap': 'cap plate',
  'drawings.elevation.capped': '{post}, {cap}',
  'drawings.detail.cap': 'Cap plate on a post\'s open top, {post}, cut through the middle',
  'drawings.detail.capPlate': '{mark}, ground smooth',
  'drawings.detail.capVent': '{mark}, vent: plug it after the bath',
  'weld.joint.cap-post': 'cap plate on post',
  'weld.joint.gusset-frame': 'gusset to gate frame',
  'weld.joint.tab-post': 'hinge tab to post',
  'drawings.gate.part.gusset': 'gusset',
  'drawings.gate.part.tab': 'hinge tab',
  'drawings.gate.part.eye': 'spring eye',
  'drawings.gate.tab': 'hinge tab, between the rails',
  'drawings.detail.gusset': 'gusset {mark}',
  'drawings.detail.eye': 'Spring eye {mark} as it is cut, plate {plate}, hole {hole}',
} as const;
