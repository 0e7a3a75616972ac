export {placedAsWritten} from '../../plugins/build-file/heal/as-written.ts'
export {healSlips} from '../../plugins/build-file/heal/heal.ts'
export {healYaml} from '../../plugins/build-file/heal/yaml-lines.ts'
export {checks} from '../../plugins/checks/checks.ts'
