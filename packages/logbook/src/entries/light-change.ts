import { surfacesOf } from './described.ts'
import type { NotUnderstood } from './fill-in.ts'
import { asTyped, kind, name, notNegative, typedTexts } from './kind.ts'
import { figure, inWordsOf } from './says.ts'
import { z } from './schema.ts'

/** From this day on a surface, or all of them, has another light or other hours of it; 0 hours are a blackout. */
export const lightChange = kind({
  name: 'light-change',
  title: 'Change of light',
  v: 1,
  body: {
    /** Left out: every surface. */
    surface: z.exactOptional(name),
    light_umol_m2_s: z.exactOptional(notNegative),
    light_h_per_day: z.exactOptional(z.number().check(z.minimum(0), z.maximum(24))),
    text: asTyped,
    typed: typedTexts,
  },
  blanks: (about) => [
    {
      name: 'surface',
      label: 'Surface',
      required: false,
      hint: 'A surface of the system; left out, all of them',
      ...surfacesOf(about),
    },
    {
      name: 'light',
      label: 'Light while the lamp is on',
      holds: 'light',
      required: false,
      hint: 'At the surface, such as 150 µmol/m2/s; left out, as before',
    },
    {
      name: 'hours',
      label: 'Hours of light a day',
      holds: 'duration',
      unit: 'h',
      to: 1,
      required: false,
      hint: 'Such as 9 h, 0 h for a blackout; left out, as before',
    },
  ],
  understand: (filled) => {
    if (!filled.has('light') && !filled.has('hours')) return nothingChanged
    return {
      ...filled.wordsAs('surface', 'surface'),
      ...filled.numberAs('light_umol_m2_s', 'light'),
      ...(filled.has('hours') && { light_h_per_day: 24 * filled.number('hours') }),
      text: [filled.typed.light, filled.typed.hours].filter((text) => text !== undefined).join(', '),
      typed: filled.typed,
    }
  },
  fills: ({ surface, light_umol_m2_s, light_h_per_day }) => ({
    ...(surface !== undefined && { surface }),
    ...(light_umol_m2_s !== undefined && { light: `${light_umol_m2_s} µmol/m2/s` }),
    ...(light_h_per_day !== undefined && { hours: `${light_h_per_day} h` }),
  }),
  says: (body) => {
    const { surface, light_umol_m2_s, light_h_per_day } = body
    const parts = [
      light_umol_m2_s === undefined ? [] : `${figure(light_umol_m2_s)} µmol/m²/s`,
      light_h_per_day === undefined
        ? []
        : light_h_per_day === 0
          ? 'dark'
          : `${figure(light_h_per_day)} h a day`,
    ].flat()
    return inWordsOf(body, `Light on ${surface ?? 'all surfaces'}: ${parts.join(', ')} from here on`)
  },
  settles: ({ surface = 'all' }) => surface,
})

const nothingChanged: NotUnderstood = {
  questions: [],
  issues: [
    {
      code: 'nothing-changed',
      where: 'Change of light',
      got: 'neither light nor hours are given',
      accepted: 'The light, the hours, or both.',
      next: 'Fill in one of them.',
    },
  ],
}
