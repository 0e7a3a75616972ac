/** Data that an address may hold itself: pictures that can name nothing further. */
const ownData = /^data:image\/(?:png|jpeg|gif|webp)[;,]/i

/**
 * Tell whether an SVG file (its bytes) is drawn from itself alone: no reference leads to another file, no entity is
 * defined, and no style brings in another. Whatever cannot be read plainly counts as leading somewhere.
 */
export function pointsNowhere(bytes: Uint8Array): boolean {
  const text = plainText(bytes)
  if (text === undefined) return false
  if (/<!ENTITY|<!DOCTYPE[^>]*\[|<\?xml-stylesheet|@import|\\/i.test(text)) return false
  const references = text.matchAll(/(?:href|src|base)\s*=\s*(?:"([^"]*)"|'([^']*)')/gi)
  for (const [, double, single] of references) if (!isOwn(double ?? single ?? '')) return false
  for (const [, inside = ''] of text.matchAll(/(?:url|src|image|image-set)\s*\(([^)]*)/gi))
    if (!isOwn(inside.trim().replace(/^["']/, ''))) return false
  return true
}

const isOwn = (address: string): boolean => /^\s*(?:#|$)/.test(address) || ownData.test(address.trim())

/** Read UTF-8 with its numbered characters written out; undefined for any other encoding, or packed bytes. */
function plainText(bytes: Uint8Array): string | undefined {
  try {
    const text = new TextDecoder('utf-8', {fatal: true}).decode(bytes)
    const encoding = /^\s*<\?xml[^>]*encoding\s*=\s*["']([^"']*)/i.exec(text)?.[1] ?? 'utf-8'
    if (!/^(utf-?8|us-ascii)$/i.test(encoding) || text.includes('\0')) return undefined
    return text.replaceAll(/&#(?:x([\da-f]+)|(\d+));/gi, (whole, hex, decimal) => {
      const code = hex ? Number.parseInt(hex, 16) : Number(decimal)
      return code <= 0x10ffff ? String.fromCodePoint(code) : whole
    })
  } catch {
    return undefined
  }
}
