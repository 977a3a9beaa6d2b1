// The content-security policy: nothing from anywhere else, no inline script or style, no request to another host. WebAssembly
// is compiled, so 'wasm-unsafe-eval' (Content Security Policy Level 3); that lets no script be made from text.
export const page_policy = [
  "default-src 'none'", "script-src 'self' 'wasm-unsafe-eval'", "style-src 'self'", "img-src 'self' data:", "font-src 'self'",
  "connect-src 'self'", "manifest-src 'self'", "worker-src 'self'", "base-uri 'none'", "form-action 'none'",
].join('; ');

// Only a header may say this.
export const header_policy = `${page_policy}; frame-ancestors 'none'`;

const types = {
  html: 'text/html; charset=utf-8', js: 'text/javascript; charset=utf-8', mjs: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8', wasm: 'application/wasm', webmanifest: 'application/manifest+json', png: 'image/png',
  svg: 'image/svg+xml', txt: 'text/plain; charset=utf-8', json: 'application/json',
};

export const type_of = (path) => types[path.slice(path.lastIndexOf('.') + 1)] || 'application/octet-stream';
