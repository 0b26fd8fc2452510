// Finds a Chromium for the browser tests, or brings one: Playwright's own where its download is reached, else Debian's.
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const debian = '/usr/bin/chromium';

/** The path of a Chromium that can be started, or an empty string for Playwright's own. */
export async function chromiumPath() {
  if (process.env.CHROMIUM_PATH) return process.env.CHROMIUM_PATH;
  if (existsSync(debian)) return debian;
  const { chromium } = await import('@playwright/test');
  if (existsSync(chromium.executablePath())) return '';
  if (tries('npx', ['playwright', 'install', 'chromium'])) return '';
  if (installsFromDebian(['chromium'])) return debian;
  console.error('No Chromium found and none could be installed. Install one and set CHROMIUM_PATH to it.');
  process.exit(1);
}

/** Brings the independent readers that the tests of pages and drawing files measure with, where Debian's packages are at hand. */
export function bringPageReaders() {
  const present = ['pdfinfo', 'qpdf', 'rsvg-convert'].every((name) => tries('which', [name], 'ignore'));
  if (!present && !installsFromDebian(['poppler-utils', 'qpdf', 'librsvg2-bin'])) {
    console.log(
      'poppler-utils, qpdf and librsvg2-bin are not all here: the tests that measure printed pages and drawing files will say which were skipped.',
    );
  }
}

function installsFromDebian(packages) {
  if (!existsSync('/usr/bin/apt-get') || process.getuid?.() !== 0) return false;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return (
    tries('apt-get', ['update'], 'ignore', env) && tries('apt-get', ['install', '-y', ...packages], 'inherit', env)
  );
}

function tries(command, args, stdio = 'inherit', env = process.env) {
  try {
    execFileSync(command, args, { stdio, env });
    return true;
  } catch {
    return false;
  }
}
