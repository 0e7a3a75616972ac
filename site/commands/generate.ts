import {readFile, writeFile} from 'node:fs/promises'
import {generated} from './generated.ts'

// Whatever is written from the code: run it after a change of the schema or of the plan's shape.

for (const {file, write} of generated) {
  const before = await readFile(file, 'utf8')
  const after = write(before)
  if (after !== before) {
    await writeFile(file, after)
    console.log(`${file} is written anew`)
  }
}
