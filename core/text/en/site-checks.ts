/** Words for what the ground, the sun and the eye of an animal decide. */
export const siteChecks = {
  'where.footing': '{count} posts: {depth}, {needed} needed against {load} at {height}; hole {hole}, soil {soil} (not doubled, IBC 1806.3.4), {held}',
  'where.footingHeld': 'held at the surface',
  'where.footingFree': 'not held at the surface',
} as const;
