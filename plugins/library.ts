/**
 * The computing library: text to build, build to plan, plan to problems and JSON. No Node module is needed, no clock
 * is read, and the same text gives the same bytes.
 */
export {mendText} from './build-file/heal/mend.ts'
export {jsonSchema} from './build-file/json-schema.ts'
export {readBuild, readJournal, readRack} from './build-file/read.ts'
export type {Build} from './build-file/schema/build.ts'
export type {Problem} from './build-file/schema/problem.ts'
export {applied, editsOf} from './build-file/yaml/apply-edits.ts'
export {checks} from './checks/checks.ts'
export {type Plan, planBuild} from './plan/plan.ts'
export {settle} from './plan/settle.ts'
export {readBody} from './syntax/body.ts'
export {planJson} from './words/printed-plan.ts'
