// npm start: installs what is missing, builds, serves the build on this machine only and opens it.
import { spawn } from 'node:child_process';
import { installWhatIsMissing } from './installed.mjs';

installWhatIsMissing();
const { build, preview } = await import('vite');
await build({ logLevel: 'warn' });
const server = await preview({ preview: { host: '127.0.0.1', port: 4173 } });
const address = `${server.resolvedUrls.local[0]}#demo`;
console.log(`\nInchsquare is ready at ${address}\nLeave this window open while you work; Ctrl+C ends it.`);

const opener = { darwin: 'open', win32: 'explorer' }[process.platform] ?? 'xdg-open';
const opening = spawn(opener, [address], { stdio: 'ignore', detached: true });
opening.on('error', () => console.log('No browser could be opened from here: open that address yourself.'));
opening.unref();
