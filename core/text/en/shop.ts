/** Words of the small commands for the shop floor. */
export const shop = {
  'arc-check.usage': `Tells whether a rolled piece is the arc that was drawn, from what is measured on it.

  npm run arc-check -- --chord LENGTH --rise LENGTH [options]

  --chord LENGTH    along a straightedge on the concave side, between the two points where it touches
  --rise LENGTH     from the middle of the straightedge to the piece
  --radius LENGTH   radius of that face, as drawn: the inside radius of the bend schedule
  --read LENGTH     what each reading may be off by; 1/32 in where it is not given
  --class LETTER    tolerance class of ISO 13920: A, B, C or D; B where it is not given
  --json            the figures alone, in inches
  --help            these words

A length is a number of inches or has its unit: 36, "3 ft", "914 mm". Exit codes: 0 told; 2 an option is at fault.
`,
  'arc-check.unknown': 'is not an option of this command; allowed is --chord, --rise, --radius, --read, --class, --json, --help',
  'arc-check.asked': 'is not given; allowed is a length over 0 in, "36", "3 ft" or "914 mm"',
  'arc-check.length': '"{value}" is not a length over 0 in; allowed is "36", "3 ft" or "914 mm"',
  'arc-check.read': '"{value}" is not a length from 0 in; allowed is "1/32", "0.5 mm"',
  'arc-check.class': '"{value}" is no class; allowed is A, B, C or D',
  'arc-check.no-value': 'has no value; allowed is one after it',
  'arc-check.rise-over-half-chord': 'is over half the chord, where a rise no longer tells the radius; allowed is at most {most}',
  'arc-check.chord-over-diameter': 'is over twice the radius as drawn; allowed is at most {most}',
  'arc-check.read-over-chord': 'is half the chord or more; allowed is less than {most}',
  'arc-check.radius': 'Radius {radius}, between {low} and {high} by what the readings may be off',
  'arc-check.open': 'a straight piece',
  'arc-check.error': 'Drawn {expected}. The ends of the chord lie {error} in {way}; class {grade} of ISO 13920 allows {tolerance} in over this chord: {verdict}',
  'arc-check.tight': 'inside the drawn arc (bent too tight)',
  'arc-check.slack': 'outside the drawn arc (bent too little)',
  'arc-check.true': 'on the drawn arc',
  'arc-check.within': 'within',
  'arc-check.outside': 'not within',
  'arc-check.unsure': 'The readings are too rough to tell: the drawn rise and the error allowed differ by less than the reading. Measure over a longer chord.',
} as const;
