/** Reads what the pages of an Ogg/Opus file say of themselves, without decoding (RFC 3533, RFC 7845). */

/** Opus always counts its granules at this rate (RFC 7845, section 4). */
const granulesPerSecond = 48_000;
const pageHeaderBytes = 27;

export function isOgg(bytes: Uint8Array): boolean {
  return isPageAt(bytes, 0);
}

/** Whether the first page holds an Opus head; Vorbis, FLAC and Speex travel in Ogg too. */
export function isOpus(bytes: Uint8Array): boolean {
  const at = pageHeaderBytes + (bytes[26] ?? 0);
  return isOgg(bytes) && new TextDecoder('latin1').decode(bytes.subarray(at, at + 8)) === 'OpusHead';
}

/** Length by the last page's granule position; nothing where no page tells one. */
export function opusSeconds(bytes: Uint8Array): number | undefined {
  if (!isOpus(bytes)) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const headAt = pageHeaderBytes + (bytes[26] ?? 0);
  if (headAt + 12 > bytes.length) return undefined;
  const preSkip = view.getUint16(headAt + 10, true);
  for (let at = bytes.length - pageHeaderBytes; at > 0; at--) {
    if (!isPageAt(bytes, at)) continue;
    const granules = view.getBigInt64(at + 6, true);
    // −1 marks a page on which no packet ends.
    if (granules >= 0n) return Math.max(0, (Number(granules) - preSkip) / granulesPerSecond);
  }
  return undefined;
}

function isPageAt(bytes: Uint8Array, at: number): boolean {
  return bytes[at] === 0x4f && bytes[at + 1] === 0x67 && bytes[at + 2] === 0x67 && bytes[at + 3] === 0x53;
}
