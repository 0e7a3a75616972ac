import type sharp from 'sharp'

/**
 * Load the library that opens and draws pictures, where there is one to. It would keep what it opened for whoever asks
 * again; nobody does, and a large journal has no memory to spare.
 */
export async function pictureLibrary(): Promise<typeof sharp> {
  const {default: library} = await import('sharp')
  library.cache(false)
  return library
}
