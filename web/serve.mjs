// Serves a packed folder on this machine alone, for trying: node web/serve.mjs --dir DIR [--port N]
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { join, resolve, sep } from 'node:path';
import { parseArgs } from 'node:util';
import { header_policy, type_of } from './policy.mjs';

const { values } = parseArgs({ options: { port: { type: 'string', default: '8123' }, dir: { type: 'string' } } });

function stop(sentence) {
  console.error(sentence);
  process.exit(1);
}

const port = Number(values.port);
if (!Number.isInteger(port) || port < 0 || port > 65535) stop(`--port ${values.port}: a number from 0 to 65535 is needed.`);
if (!values.dir) stop('Give the folder to serve: --dir DIR.');
const root = resolve(values.dir);
if (!statSync(join(root, 'index.html'), { throwIfNoEntry: false })) stop(`${root} holds no packed page (no index.html).`);

// The file a path means, or undefined; never anything outside the folder.
function file_of(path) {
  let name;
  try {
    name = decodeURIComponent(path);
  } catch {
    return undefined;
  }
  if (name.includes('\0')) return undefined;
  const file = resolve(root, `.${name.endsWith('/') ? `${name}index.html` : name}`);
  if (!file.startsWith(root + sep)) return undefined;
  const found = statSync(file, { throwIfNoEntry: false });
  return found && found.isFile() ? { file, size: found.size } : undefined;
}

const headers = {
  'Content-Security-Policy': header_policy, 'Cache-Control': 'no-cache', 'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer', 'Cross-Origin-Opener-Policy': 'same-origin',
};

const server = createServer((request, response) => {
  const finish = (status, more, text) => {
    response.writeHead(status, { ...headers, 'Content-Type': 'text/plain; charset=utf-8', ...more });
    response.end(text);
  };
  if (request.method !== 'GET' && request.method !== 'HEAD') return finish(405, { Allow: 'GET, HEAD' }, 'Only GET.\n');
  const found = file_of(request.url.split('?')[0]);
  if (!found) return finish(404, {}, 'Not found.\n');
  response.writeHead(200, { ...headers, 'Content-Type': type_of(found.file), 'Content-Length': found.size });
  if (request.method === 'HEAD') return response.end();
  return createReadStream(found.file).on('error', () => response.destroy()).pipe(response);
});

server.on('error', (problem) => {
  if (problem.code === 'EADDRINUSE') stop(`Port ${port} is taken on this machine; choose another with --port N.`);
  stop(`The server did not start: ${problem.message}`);
});
server.listen(port, '127.0.0.1', () => console.log(`http://127.0.0.1:${server.address().port}/`));
