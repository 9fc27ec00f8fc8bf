/** Words of the small commands for the shop floor. */
export const shop = {
  'arc-check.usage': `Tells whether a rolled piece is the arc that was drawn, from what is measured on it.

  npm run arc-check -- --chord LENGTH --rise LENGTH [options]
  npm run arc-check -- --point X,Y --point X,Y --point X,Y [options]

  --chord LENGTH    along a straightedge on the concave side, between the two points where it touches
  --rise LENGTH     from the middle of the straightedge to the piece
  --point X,Y       a point of that face, two lengths from any square corner; three of them, in their order along the piece
  --radius LENGTH   radius of that face, as drawn: the inside radius of the bend schedule
  --read LENGTH     what each reading may be off by; 1/32 in where it is not given
  --length LENGTH   of the whole piece along that face: the error is told at its ends
  --class LETTER    tolerance class of ISO 13920: A, B, C or D; B where it is not given
  --json            the figures alone, in inches
  --help            these words

A length is a number of inches or has its unit: 36, "3 ft", "914 mm". Exit codes: 0 told; 2 an option is at fault.
`,
  'arc-check.unknown': 'is not an option of this command; allowed is --chord, --rise, --point, --radius, --read, --length, --class, --json, --help',
  'arc-check.asked': 'is not given; allowed is a length over 0 in, "36", "3 ft" or "914 mm"',
  'arc-check.length': '"{value}" is not a length over 0 in; allowed is "36", "3 ft" or "914 mm"',
  'arc-check.read': '"{value}" is not a length from 0 in; allowed is "1/32", "0.5 mm"',
  'arc-check.class': '"{value}" is no class; allowed is A, B, C or D',
  'arc-check.no-value': 'has no value; allowed is one after it',
  'arc-check.rise-over-half-chord': 'is over half the chord, where a rise no longer tells the radius; allowed is at most {most}',
  'arc-check.chord-over-diameter': 'is over twice the radius as drawn; allowed is at most {most}',
  'arc-check.beside-points': 'does not go with --point; allowed is a chord and a rise, or three points',
  'arc-check.point': '"{value}" is not two lengths with a comma between; allowed is "18 in, 1 1/8 in"',
  'arc-check.points': 'is given {count} times; allowed is three times, in the order along the piece',
  'arc-check.points-on-a-line': 'the three lie on a line; allowed is three points of an arc',
  'arc-check.points-out-of-order': 'the middle one does not lie between the other two on less than half a circle; allowed is their order along the piece',
  'arc-check.length-alone': 'tells nothing without --radius; allowed is both',
  'arc-check.panel-over-half-turn': 'is over half a turn of the drawn radius, or of the one that was read; allowed is a piece of less than half a turn',
  'arc-check.read-over-chord': 'is half the chord or more; allowed is less than {most}',
  'arc-check.radius': 'Radius {radius}, between {low} and {high} by what the readings may be off',
  'arc-check.open': 'a straight piece',
  'arc-check.error': 'Drawn {expected}. The ends of the chord lie {error} in {way}; class {grade} of ISO 13920 allows {tolerance} in over this chord: {verdict}',
  'arc-check.error-piece': 'Drawn {expected}. At this radius the ends of the whole piece would lie {error} in {way}; class {grade} of ISO 13920 allows {tolerance} in over its length: {verdict}',
  'arc-check.tight': 'inside the drawn arc (bent too tight)',
  'arc-check.slack': 'outside the drawn arc (bent too little)',
  'arc-check.true': 'on the drawn arc',
  'arc-check.within': 'within',
  'arc-check.outside': 'not within',
  'arc-check.unsure': 'The readings are too rough to be sure of that: off by what they may be, they would say otherwise. Measure over a longer chord.',

  'cut-list.usage': `Cuts pieces from stock lengths with the fewest bars, and says how few any plan could use.

  npm run cut-list -- PIECES.csv --stock "SECTION=LENGTH" [--stock ...] --out CUTS.csv [options]

  PIECES.csv        columns mark, section, length, quantity, in any order, under a header row
  --stock TEXT      a section and a length that it is bought in: "pipe 2 sch 40=21 ft"; once for each length
  --kerf LENGTH     what the saw takes between two pieces; 1/8 in where it is not given, 0 is allowed
  --seconds N       as long as this for better plans; without it the effort is bounded by counts
  --out CUTS.csv    where the cut list goes, lengths in inches; a file that stands there is replaced whole
  --help            these words

A length is a number of inches or has its unit. Exit codes: 0 written; 2 the pieces or an option are at fault, nothing written;
3 the file could not be written, what stood there still stands.
`,
  'cut-list.unknown': 'is not an option of this command; allowed is --stock, --kerf, --seconds, --out, --help',
  'cut-list.pieces-asked': 'is not given; allowed is the path of one CSV of pieces',
  'cut-list.pieces-extra': 'is one argument too many; allowed is the path of one CSV of pieces',
  'cut-list.out-asked': 'is not given; allowed is --out FILE, where the cut list goes',
  'cut-list.out-is-pieces': 'is the file of pieces itself; allowed is another file',
  'cut-list.stock-asked': 'is not given; allowed is --stock "SECTION=LENGTH", at least once',
  'cut-list.stock': '"{value}" is not SECTION=LENGTH; allowed is "pipe 2 sch 40=21 ft", a length from 1 in to 960 in',
  'cut-list.kerf': '"{value}" is not a kerf; allowed is a length from 0 in to 1 in',
  'cut-list.seconds': '"{value}" is not a time; allowed is seconds, over 0 and at most 3600',
  'cut-list.no-value': 'has no value; allowed is one after it',
  'cut-list.missing': 'is not there; allowed is the path of a CSV of pieces',
  'cut-list.unreadable': 'cannot be read ({reason}); allowed is a CSV of pieces that may be read',
  'cut-list.too-large': 'is over {mb} MB; allowed is a CSV of pieces, which is far smaller',
  'cut-list.csv': 'is not a CSV at row {row}; allowed is RFC 4180 with one header row',
  'cut-list.empty': 'holds no piece; allowed is a header row and at least one row of pieces',
  'cut-list.column': 'has no column {name}; allowed is a header row with mark, section, length, quantity',
  'cut-list.column-twice': 'has the column {name} twice; allowed is once',
  'cut-list.row-mark': 'row {row}, mark is empty; allowed is a piece mark of up to 60 characters',
  'cut-list.row-section': 'row {row}, section is empty; allowed is a name of up to 60 characters',
  'cut-list.row-length': 'row {row}, length "{value}"; allowed is a length over 0 in',
  'cut-list.row-quantity': 'row {row}, quantity "{value}"; allowed is a whole number from 0 to 100000',
  'cut-list.row-stock': 'row {row}, section "{section}" has no stock length; allowed is --stock "{section}=LENGTH"',
  'cut-list.row-too-long': 'row {row}, {mark} is {length} long; allowed is at most the longest stock of {section}, {longest}',
  'cut-list.too-many': 'asks for {count} pieces in all; allowed is at most 100000',
  'cut-list.progress': '{section}: {bars} bars, at least {least}',
  'cut-list.section': '{section}: {bars} bars, at least {least}',
  'cut-list.written': 'Written: {rows} cuts in {file}',
  'cut-list.unwritten': 'cannot be written ({reason}), so what stood there still stands; allowed is a place that may be written',
  'cut-list.out-folder': 'is not a file; allowed is the path of a CSV, new or there',
  'cut-list.interrupted': 'Interrupted: nothing was written to {file}',
} as const;
