import type {MendReading} from '../../plugins/build-file/heal/mend.ts'
import {inOrder, readBuild, readJournal, readRack} from '../../plugins/build-file/read.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {planBuild} from '../../plugins/plan/plan.ts'
import {settle} from '../../plugins/plan/settle.ts'
import {readBody} from '../../plugins/syntax/body.ts'

/** How a text of the journal is read, by the name of its file: settings, the rack, or a build with this slug. */
export function textReader(
  name: string,
  slug: string,
  journal: JournalSettings,
): (text: string) => MendReading {
  if (name === 'journal.yaml')
    return (text) => {
      const {settings, problems} = readJournal(text)
      return {problems, values: settings}
    }
  if (name === 'rack.yaml')
    return (text) => {
      const {pieces, problems} = readRack(text, journal)
      // The rack is one list: its items go by the dash that they begin with.
      return {problems, values: {'-': pieces}}
    }
  return (text) => {
    const {build, problems} = readBuild(text, {slug, journal, body: readBody})
    const settled = settle(build, journal)
    const found = checks(settled, planBuild(settled, {journal, pieces: []}))
    return {problems: inOrder([...problems, ...found]), values: build.values}
  }
}
