/** A block of most disks: a flat picture of the largest size ends in fewer zeros; tried. */
const zeros = 4096

/**
 * Tell whether the end of a picture is not written yet, of a file whose length was set before: it is full of zeros, which
 * decoders of two formats take for the end of the picture. The others find it out by themselves.
 */
export function isFilledUp(bytes: Uint8Array, format: string | undefined): boolean {
  if (format === 'gif') return endsInZeros(bytes) && bytes.findLast((byte) => byte !== 0) !== trailer
  return format === 'webp' && endsInZeros(pixelsOf(bytes))
}

const endsInZeros = (bytes: Uint8Array) =>
  bytes.length > zeros && bytes.subarray(-zeros).every((byte) => byte === 0)

/** Ends every GIF; zeros may follow it (GIF89a, 27). */
const trailer = 0x3b

/** The chunk of a WebP that holds its pixels; nothing where there is none (RFC 9649, 2.3). */
function pixelsOf(bytes: Uint8Array): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  for (let at = 12; at + 8 <= bytes.length; ) {
    const length = view.getUint32(at + 4, true)
    if (/^VP8[ L]$/.test(String.fromCharCode(...bytes.subarray(at, at + 4))))
      return bytes.subarray(at + 8, at + 8 + length)
    // A chunk of an odd length is followed by a zero.
    at += 8 + length + (length % 2)
  }
  return new Uint8Array()
}
