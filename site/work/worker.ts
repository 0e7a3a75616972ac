import {parentPort} from 'node:worker_threads'
import {ownWorks} from './own-works.ts'
import type {Works} from './works.ts'

/** A step asked of a worker, and its answer. */
export interface Asked {
  id: number
  step: keyof Works
  input: never
}
export interface Answered {
  id: number
  done: unknown
}

const works = ownWorks()
parentPort?.on('message', async ({id, step, input}: Asked) => {
  const answered: Answered = {id, done: await works[step](input)}
  parentPort?.postMessage(answered)
})
