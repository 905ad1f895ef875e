// Runs every test once in each time zone in which calendar and clock code is known to break:
// the zone of reference, daylight saving north and south, a quarter-hour offset, the date line.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

// What these test reads no clock and no zone (the tidy test holds the pure folders to that; the last
// five are about processes and the form of the database), and takes its time: once for all zones, in the first.
const ZONELESS = [
  'tests/assessment/classifications/**',
  'tests/assessment/curability/**',
  'tests/capacity/**',
  'tests/conformance/**',
  'tests/mapping/*graph.test.ts',
  'tests/mapping/*values.test.ts',
  'tests/mapping/pathology-verdicts.test.ts',
  'tests/measure/**',
  'tests/outcomes/**',
  'tests/pages/**',
  'tests/planted/**',
  'tests/rules/**',
  'tests/sandbox/example-records.test.ts',
  'tests/statistics/**',
  'tests/synthetic/distributions.test.ts',
  'tests/synthetic/goodness-of-fit.test.ts',
  'tests/synthetic/load.test.ts',
  'tests/synthetic/program.test.ts',
  'tests/terminology/**',
  'tests/views/**',
  'tests/cli/program.test.ts',
  'tests/cli/serve.test.ts',
  'tests/store/migrate.test.ts',
  'tests/store/own-postgres.test.ts',
  'tests/whole/two-services.test.ts',
];

const ZONES = ['UTC', 'Europe/Berlin', 'America/Sao_Paulo', 'Asia/Kathmandu', 'Pacific/Kiritimati'];

const folder = mkdtempSync(join(tmpdir(), 'zones-'));
let passed = 0;
let failed = 0;
for (const zone of ZONES) {
  console.log(`\nTime zone ${zone}`);
  const report = join(folder, `${zone.replace('/', '-')}.json`);
  const run = spawnSync(
    process.execPath,
    [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--reporter=dot',
      '--reporter=json',
      `--outputFile.json=${report}`,
      ...(zone === ZONES[0] ? [] : ZONELESS.flatMap((files) => ['--exclude', files])),
      ...process.argv.slice(2),
    ],
    { stdio: ['ignore', 'inherit', 'inherit'], env: { ...process.env, TZ: zone } },
  );
  const counts = readCounts(report);
  passed += counts.passed;
  failed += counts.failed + (run.status === 0 ? 0 : counts.failed === 0 ? 1 : 0);
}
rmSync(folder, { recursive: true });
console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);

function readCounts(report) {
  try {
    const { numPassedTests, numFailedTests, numFailedTestSuites } = JSON.parse(
      readFileSync(report, 'utf8'),
    );
    return { passed: numPassedTests, failed: Math.max(numFailedTests, numFailedTestSuites) };
  } catch {
    return { passed: 0, failed: 1 };
  }
}
