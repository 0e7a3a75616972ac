export {planJson} from '../../plugins/words/printed-plan.ts'
