/**
 * Settle the path that the site will lie under, with a slash at both ends; undefined for what is no path of a
 * site (a whole address, steps up, question marks).
 */
export function pathPrefix(asked: string): string | undefined {
  const inside = asked.replaceAll(/^\/|\/$/g, '')
  if (inside === '') return '/'
  return /^[A-Za-z0-9._~-]+(\/[A-Za-z0-9._~-]+)*$/.test(inside) && !/(^|\/)\.+(\/|$)/.test(inside)
    ? `/${inside}/`
    : undefined
}
