// Runs a TypeScript file of the project in Node: node scripts/run.mjs <file> [arguments of its own]
import { installWhatIsMissing } from './installed.mjs';

installWhatIsMissing();
const { createServer } = await import('vite');
const [file, ...args] = process.argv.slice(2);
const server = await createServer({
  configFile: false,
  logLevel: 'error',
  server: { middlewareMode: true, hmr: false, ws: false, watch: null },
  optimizeDeps: { noDiscovery: true },
});
try {
  const { main } = await server.ssrLoadModule(`/${file}`);
  process.exitCode = (await main(args)) ?? 0;
} finally {
  await server.close();
}
