import {mkdtempSync, rmSync} from 'node:fs'
import {join} from 'node:path'
import {WritingSession} from '../../site/serve/writing-session.ts'

/** What showing a journal once costs, as the operating system counts it. */
export interface Cost {
  /** Of processor time. */
  seconds: number
  /** The most memory held at once. */
  megabytes: number
  problems: number
}

// Run in a process of its own, in a journal's folder: make every page as npm start does, whatever is wrong, and say
// on the last line what it took.
const folder = mkdtempSync(join(process.cwd(), 'shown-'))
const {problems} = (await new WritingSession(process.cwd(), {folder, files: {}}).refresh())!
rmSync(folder, {recursive: true})
const {userCPUTime, systemCPUTime, maxRSS} = process.resourceUsage()
const cost: Cost = {
  seconds: (userCPUTime + systemCPUTime) / 1e6,
  megabytes: maxRSS / 1024,
  problems: problems.flatMap((file) => file.problems).length,
}
console.log(JSON.stringify(cost))
