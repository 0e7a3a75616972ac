export {type SectionName, sectionNames} from '../tables/section-names.ts'
