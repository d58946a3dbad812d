import { asTyped, kind } from './kind.ts'
import { z } from './schema.ts'

/**
 * Quantities a keeper reads, and the unit in which `value` stands: nitrate mg/L as NO3, phosphate
 * mg/L as PO4, ammonia mg/L of total ammonia as N, nitrite mg/L as NO2, alkalinity meq/L, calcium and
 * magnesium mg/L, salinity practical (PSS-78), temperature °C, pH as read.
 */
export const readQuantities = {
  nitrate: 'mg/L NO3',
  phosphate: 'mg/L PO4',
  ammonia: 'mg/L N',
  nitrite: 'mg/L NO2',
  alkalinity: 'meq/L',
  calcium: 'mg/L',
  magnesium: 'mg/L',
  salinity: 'psu',
  temperature: '°C',
  pH: 'pH',
} as const

export type ReadQuantity = keyof typeof readQuantities

const names = Object.keys(readQuantities) as [ReadQuantity, ...ReadQuantity[]]

export const reading = kind({
  name: 'reading',
  title: 'Reading of the water',
  v: 1,
  body: {
    quantity: z.enum(names),
    /** Null where nothing was detected and no limit is known. */
    value: z.number().nullable(),
    /** True: `value` is the limit below which the kit read nothing. */
    belowDetection: z.boolean(),
    /** True: `value` is the end of the scale, the water holds more. */
    aboveRange: z.exactOptional(z.boolean()),
    approximate: z.exactOptional(z.boolean()),
    /** Low and high of a reading such as "5-10"; `value` is the middle. */
    interval: z.exactOptional(z.tuple([z.number(), z.number()])),
    text: asTyped,
    unit: z.exactOptional(z.string()),
    form: z.exactOptional(z.string()),
    kit: z.exactOptional(z.string()),
    remark: z.exactOptional(z.string()),
  },
})
