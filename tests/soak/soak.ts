/**
 * `npm run soak -- [COUNT] [SEED]`: random projects of new seeds through every property, 200 of them unless said. It stops at the
 * first failure and tells the seed and the project that shows it; the exit code is then 1.
 */
import { randomInt } from 'node:crypto';
import { randomProjects } from '../support/random-brief.ts';
import { checkProject } from './check-project.ts';

/** One in so many goes through all writers, twice. */
const WRITTEN = 10;

const [count = 200, seed = randomInt(1, 2 ** 31)] = process.argv.slice(2).map(Number);
if (!Number.isInteger(count) || count < 1 || !Number.isInteger(seed)) {
  console.error(`COUNT and SEED are whole numbers, COUNT at least 1, not ${process.argv.slice(2).join(' ')}`);
  process.exit(2);
}
console.log(`${String(count)} projects of seed ${String(seed)}`);
let drawn = 0;
let tried = 0;
let failed = 0;
for (const [index, project] of randomProjects(seed, count).entries()) {
  tried += 1;
  const problems: string[] = [];
  try {
    const checked = await checkProject(project, index % WRITTEN === 0);
    if (checked.drawn) {
      drawn += 1;
      problems.push(...checked.breaches);
    }
  } catch (error) {
    problems.push(error instanceof Error ? (error.stack ?? error.message) : String(error));
  }
  if (problems.length > 0) {
    failed += 1;
    console.log(`seed ${String(seed)}, project ${String(index)}:\n  ${problems.slice(0, 10).join('\n  ')}\n  ${JSON.stringify(project)}`);
    break;
  }
}
console.log(`${String(drawn)} of ${String(tried)} drawn, ${String(failed)} failed`);
const enough = drawn >= 0.8 * tried;
if (!enough) console.log('fewer than 80 % were drawn');
process.exitCode = failed > 0 || !enough ? 1 : 0;
