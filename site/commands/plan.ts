import {planJson} from '../../plugins/words/printed-plan.ts'
import {findFile, notThere} from '../journal/find-file.ts'
import {readOne} from '../journal/read-one.ts'
import {fails, printable, report} from './report.ts'
import {readArguments} from './usage.ts'

const usage = `npm run --silent plan -- FILE    prints the plan of one build file as JSON

Problems go to standard error.
Leaves with 1 on errors and faults, with 2 where FILE is not there, with 0 otherwise.`

const {positionals} = readArguments(usage, {}, {fewest: 1, most: 1})
const root = process.cwd()
const file = positionals[0]!
const found = await findFile(file, process.env.INIT_CWD ?? root, root)
if ('build' in found) {
  const {plan, problems} = await readOne(found, root)
  process.stdout.write(planJson(plan, problems))
  const files = [{file, problems}]
  if (problems.length > 0) console.error(report(files, process.stderr))
  process.exitCode = fails(files) ? 1 : 0
} else {
  console.error(printable(notThere(file, found)))
  process.exitCode = 2
}
