export {checks} from '../../plugins/checks/checks.ts'
