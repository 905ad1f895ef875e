// Installs what package-lock.json names unless it is installed already. Needs Node and npm alone.
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';

const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Node ${process.versions.node} is too old: Node 20.19 or newer is needed.`);
  process.exit(2);
}

const installed = 'node_modules/.package-lock.json';
const fresh =
  existsSync(installed) &&
  statSync(installed).mtimeMs >= statSync('package-lock.json').mtimeMs &&
  Object.keys(JSON.parse(readFileSync('package.json', 'utf8')).dependencies).every((name) =>
    existsSync(`node_modules/${name}/package.json`),
  );
if (!fresh) {
  console.error('Installing the packages that package-lock.json names ...');
  execFileSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
}
