// SPDX-License-Identifier: BSL-1.0
// What a file is that is no plan, so that the page can say so.

const starts = [
  [[0x89, 0x50, 0x4e, 0x47], 'is a picture (PNG), not a plan'],
  [[0xff, 0xd8, 0xff], 'is a picture (JPEG), not a plan'],
  [[0x47, 0x49, 0x46, 0x38], 'is a picture (GIF), not a plan'],
  [[0x52, 0x49, 0x46, 0x46], 'is a picture or a recording, not a plan'],
  [[0x25, 0x50, 0x44, 0x46], 'is a PDF document, not a plan'],
  [[0x50, 0x4b, 0x03, 0x04], 'is an archive or an office document, not a plan'],
  [[0x00, 0x61, 0x73, 0x6d], 'is a program, not a plan'],
  [[0x7f, 0x45, 0x4c, 0x46], 'is a program, not a plan'],
];

/** Why these bytes are no plan, reading on from the file's name; nothing where they may be one. */
export function whatIsIt(bytes) {
  if (bytes.length === 0) return 'is empty';
  for (const [start, words] of starts) if (start.every((b, i) => bytes[i] === b)) return words;
  if (bytes[4] === 0x66 && bytes[5] === 0x74 && bytes[6] === 0x79 && bytes[7] === 0x70) return 'is a picture or a film, not a plan';
  if (/^\s*<(!doctype|html|svg|\?xml)/i.test(new TextDecoder().decode(bytes.subarray(0, 200)))) return 'is a page or a drawing, not a plan';
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return 'is no text in UTF-8';
  }
  return bytes.includes(0) ? 'is no text' : '';
}
