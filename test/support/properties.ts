import fc from 'fast-check'
import './slow.ts'

/** Properties run from this seed, so that a run repeats; `npm run fuzz` sets others and prints them. */
fc.configureGlobal({seed: Number(process.env.PROPERTY_SEED ?? 20_260_307)})

export default fc
