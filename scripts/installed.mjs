// Brings node_modules in step with package-lock.json, and only then: a second start costs nothing.
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const mark = 'node_modules/.installed-for';

export function installWhatIsMissing() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    console.error(`Inchsquare needs Node.js 20.19 or newer; this is ${process.versions.node}.`);
    process.exit(1);
  }
  const wanted = createHash('sha256').update(readFileSync('package-lock.json')).digest('hex');
  if (existsSync(mark) && readFileSync(mark, 'utf8') === wanted) return;
  console.log('Installing what is missing…');
  execFileSync('npm', ['ci', '--no-audit', '--no-fund'], { stdio: 'inherit', shell: process.platform === 'win32' });
  writeFileSync(mark, wanted);
}
