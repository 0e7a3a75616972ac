/**
 * Read a Range header for a file of `bytes`: from and to, both included. Undefined where there is none or it
 * asks for several; 'none' where it asks for what the file does not have. Source: RFC 9110, section 14.
 */
export function byteRange(header: string | undefined, bytes: number): [number, number] | 'none' | undefined {
  const asked = /^bytes=(\d*)-(\d*)$/.exec(header ?? '')
  if (!asked || (asked[1] === '' && asked[2] === '')) return undefined
  const last = bytes - 1
  const [from, to] =
    asked[1] === ''
      ? [Math.max(0, bytes - Number(asked[2])), last]
      : [Number(asked[1]), asked[2] === '' ? last : Math.min(Number(asked[2]), last)]
  return from > last || from > to ? 'none' : [from, to]
}
