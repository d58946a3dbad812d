import type { Rock } from '@holdfast/ecosystem'

import { choicesOf } from './blank.ts'
import { asTyped, kind, typedTexts } from './kind.ts'
import { figure, inWordsOf } from './says.ts'
import { rock, rockKinds } from './system-description.ts'

/** Rock put into the system, beside what its description names. */
export const rockAdded = kind({
  name: 'rock-added',
  title: 'Rock added',
  v: 1,
  body: { rock, text: asTyped, typed: typedTexts },
  blanks: () => [
    {
      name: 'kind',
      label: 'Kind of rock',
      holds: 'choice',
      required: true,
      hint: 'Where it comes from decides what it holds',
      choices: choicesOf(rockKinds),
    },
    { name: 'mass', label: 'Mass', holds: 'mass', required: true, hint: 'Such as 5 kg', above: 0 },
    {
      name: 'age',
      label: 'Time under sea water',
      holds: 'duration',
      required: true,
      hint: 'How long it has been in sea water, such as 800 d; 0 d for new rock',
    },
  ],
  understand: (filled) => ({
    rock: {
      kind: filled.words('kind') as Rock['kind'],
      mass_kg: filled.number('mass') / 1000,
      age_days: filled.number('age'),
    },
    text: filled.typed.mass ?? '',
    typed: filled.typed,
  }),
  fills: ({ rock }) => ({ kind: rock.kind, mass: `${rock.mass_kg} kg`, age: `${rock.age_days} d` }),
  says: (body) => inWordsOf(body, `${figure(body.rock.mass_kg)} kg ${body.rock.kind} rock added`),
})
