/** Words for the command. Keys start with their area and a dot. */
export const command = {
  'command.usage': `Writes the shop drawings, schedules and findings of a project into one folder.

  npm run package -- PROJECT.penwright.json --out FOLDER [options]

  --out FOLDER      where the package goes: a new folder, an empty one, or a package written before, which is replaced whole
  --only KINDS      some of it: {kinds}, with commas between
  --units in|mm     the units of drawings and schedules, whatever the project says
  --since PROJECT   the project of an earlier issue: what changed in the drawings since stands in clouds
  --strict          exit code 1 where a finding says Fix
  --keep-marks      writes the piece marks that were issued back into the project file
  --help            these words

Exit codes: 0 written; 1 written, but --strict and a finding says Fix; 2 the project or an option is at fault, nothing written;
3 the folder could not be written, what stood there still stands.
`,
  'command.option-unknown': 'is not an option of this command; allowed is --out, --only, --units, --since, --strict, --keep-marks, --help',
  'command.option-no-value': 'has no value; allowed is {allowed}',
  'command.option-twice': 'is given more than once; allowed is once',
  'command.option-units': '"{value}" are not units; allowed is in or mm',
  'command.option-only': '"{value}" is not a kind of file; allowed is {kinds}, with commas between',
  'command.out-asked': 'is not given; allowed is --out FOLDER, the folder that the package goes into',
  'command.project-asked': 'is not given; allowed is the path of one project file',
  'command.project-extra': 'is one argument too many; allowed is the path of one project file',
  'command.allowed-folder': 'the path of a folder',
  'command.allowed-units': 'in or mm',
  'command.allowed-project': 'the path of a project file',
  'command.since-fault': 'the earlier issue, {fault}',

  'command.project-missing': 'is not there; allowed is the path of a project file',
  'command.project-folder': 'is a folder; allowed is the path of a project file',
  'command.project-not-file': 'is not a file that can be read through; allowed is the path of a project file',
  'command.project-too-large': 'is over {mb} MB; allowed is a project file, which is far smaller',
  'command.project-unreadable': 'cannot be read ({reason}); allowed is a project file that may be read',
  'command.project-utf16': 'is written in UTF-16; allowed is UTF-8 (save it again with that encoding)',
  'command.project-not-utf8': 'is not UTF-8 from line {line} on; allowed is UTF-8 (save it again with that encoding)',
  'command.project-in-out': 'holds the project file {project}; allowed is a folder that the project file does not lie in',

  'command.out-not-folder': 'is not a folder; allowed is a new folder, an empty one, or a package written before',
  'command.out-parent': 'lies under something that is not a folder; allowed is a path through folders',
  'command.out-dangling': 'is a link to nothing; allowed is a new folder, an empty one, or a package written before',
  'command.out-no-manifest': 'is not empty and holds no package, so it is left as it is; allowed is a new folder, an empty one, or a package written before',
  'command.out-foreign-manifest': 'holds a manifest.json that is not a package\'s, so it is left as it is; allowed is a new folder, an empty one, or a package written before',
  'command.out-stranger': 'holds {file}, which its manifest does not list, so it is left as it is; allowed is a folder that holds a package and nothing else',
  'command.out-edited': 'holds {file}, which was changed after it was written, so it is left as it is; allowed is a package as it was written (move the changed file elsewhere first)',
  'command.out-fuller': 'holds a fuller package (with {kinds} as well), so it is left as it is; allowed is --only with all that it holds, or another folder',
  'command.out-in-use': 'is being written by another run now (process {process}); allowed is one run at a time',
  'command.out-raced': 'is being written by another run now; allowed is one run at a time',
  'command.out-changed': 'was changed by somebody while this run was at work, so it is left as it is; allowed is the same command again',
  'command.out-taken': 'holds something new since a run was interrupted, so it is left as it is; allowed is another folder; the package that stood there is kept in {folder}',
  'command.out-unwritten': 'cannot be written ({reason}), so what stood there still stands; allowed is a folder in a place that may be written',
  'command.work-foreign': 'stands where the work of this command goes and is not of its making, so it is left as it is; allowed is move it elsewhere first',
  'command.work-stranger': 'was put among the leftovers of an interrupted run, so it is left as it is; allowed is move it elsewhere first',
  'command.marks-unwritten': 'cannot be written ({reason}); the package is written, but its marks were not kept in the project; allowed is a project file that may be written',
  'command.marks-changed': 'was changed by somebody while this run was at work; the package is written, but its marks were not kept in the project; allowed is the same command again',

  'command.system-permission': 'no permission, {code}',
  'command.system-read-only': 'the disk is read-only, {code}',
  'command.system-full': 'the disk is full, {code}',
  'command.system-name-too-long': 'the name is too long, {code}',
  'command.system-busy': 'it is in use, or the root of a disk, {code}',
  'command.system-gone': 'something on the way to it is gone, {code}',
  'command.system-not-folder': 'something on the way to it is not a folder, {code}',
  'command.system-exists': 'something else has come to stand there, {code}',
  'command.system-loop': 'a link leads back to itself, {code}',
  'command.system-broken': 'the disk reports an error, {code}',
  'command.system-other': 'the system refuses it, {code}',

  'command.progress': '{done} of {total}  {path}',
  'command.written': 'Written: {files} files in {folder}',
  'command.findings': 'Findings: {ok} OK, {look} Look, {fix} Fix',
  'command.finding-fix': 'Fix: {id}, {where}',
  'command.marks-kept': '{count} new piece marks written into {project}',
  'command.marks-none': 'No new piece marks: {project} is as it was',
  'command.leftover': '{folder}: leftovers that could not be taken away; the next run tries again',
  'command.interrupted': 'Interrupted: what stood in {folder} still stands',
  'command.demo': 'Begin with drawings/all.pdf and report/findings.pdf in {folder}',
  'command.bug': 'A mistake in this program, not in your project. What stood in the folder still stands:',

  'package.all-drawings': 'All drawings',
  'package.stations': 'Stations of the path',
  'package.manifest': 'What this package holds',
  'package.pdf-subject': 'Permanent cattle working facility, revision {letter}',
  'package.pieces': 'Piece list',
  'package.bends': 'Bend schedule',
  'package.cut-list': 'Cut list',
  'package.no-solver': 'The solver that plans the cut list could not be started, and no lesser list is made in its place: {reason}',
  'package.materials': 'Bill of materials',
  'package.openings': 'Gates and backstops',
  'package.stakeout': 'Stakeout table',

} as const;
