// SPDX-License-Identifier: BSL-1.0
// What build.mjs packs (gzip, base64), unpacked as it streams by: the page and its workers do it alike.

export function unpacked(text, type = 'application/json') {
  const letters = atob(text);
  const bytes = new Uint8Array(letters.length);
  for (let i = 0; i < bytes.length; ++i) bytes[i] = letters.charCodeAt(i);
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Response(stream, { headers: { 'Content-Type': type } });
}
