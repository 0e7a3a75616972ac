import {z} from 'zod'

// The shape of the plan is written once, here and beside: the types come from it, and so does its JSON Schema.
// Only types are imported from these files by the computing core, so no browser loads the schema library.

export const n = z.number()
export const s = z.string()
export const flag = z.boolean()
export const list = <T extends z.ZodType>(item: T) => z.array(item)
export const open = <T extends z.ZodRawShape>(shape: T) => z.object(shape)
