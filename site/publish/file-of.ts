/** Name the file, from the site's root, that an address is served from: `/builds/x/` is `builds/x/index.html`. */
export function fileOf(address: string): string {
  return address.slice(1) + (address.endsWith('/') ? 'index.html' : '')
}
