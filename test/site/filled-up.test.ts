import sharp from 'sharp'
import {expect, test} from 'vitest'
import {lookAtPicture} from '../../site/pictures/look.ts'
import '../support/slow.ts'

// Pictures of noise, so that no coder has runs of zeros to write; each format as a general-purpose library writes it.
const [width, height] = [200, 150]
const noise = Buffer.from(
  Array.from({length: width * height * 3}, (_, at) => ((at * 7919) % 251) ^ (at % 37)),
)
const picture = () => sharp(noise, {raw: {width, height, channels: 3}})
const written = {
  jpeg: () => picture().jpeg(),
  'progressive jpeg': () => picture().jpeg({progressive: true}),
  png: () => picture().png(),
  webp: () => picture().webp(),
  'webp with a profile': () => picture().withIccProfile('srgb').webp(),
  'webp without loss': () => picture().webp({lossless: true}),
  avif: () => picture().avif({effort: 0}),
  gif: () => picture().gif(),
  tiff: () => picture().tiff({compression: 'lzw'}),
}

test.each(Object.entries(written))(
  '%s is told to break off, cut or filled up, and never where it is whole',
  async (_, write) => {
    const whole = await write().toBuffer()
    expect((await lookAtPicture(whole)).trouble).toBeUndefined()
    for (const share of [0.1, 0.7]) {
      const part = whole.subarray(0, whole.length * share)
      const filled = Buffer.concat([part, Buffer.alloc(whole.length - part.length)])
      for (const bytes of [part, filled])
        expect((await lookAtPicture(bytes)).trouble).toMatch(/^(breaks off|no picture)$/)
    }
  },
)

test('a flat picture is whole, and so is one with zeros behind its end', async () => {
  for (const background of ['#000', '#987'])
    for (const format of ['webp', 'gif'] as const) {
      const whole = await sharp({create: {width: 300, height: 200, channels: 3, background}})
        .toFormat(format)
        .toBuffer()
      const padded = Buffer.concat([whole, Buffer.alloc(9000)])
      for (const bytes of [whole, padded]) expect((await lookAtPicture(bytes)).trouble).toBeUndefined()
    }
})
