import { expect, test } from 'vitest'
import { counted } from './counted.ts'

test.each([
  [1, 'bicolor blenny', '1 bicolor blenny'],
  [2, 'bicolor blenny', '2 bicolor blennies'],
  [106, 'banded trochus snail', '106 banded trochus snails'],
  [3, 'chestnut turban snail (Caribbean)', '3 chestnut turban snails (Caribbean)'],
  [2, 'white-faced (powder-brown) tang', '2 white-faced (powder-brown) tangs'],
  [2, 'molly, acclimated to sea water', '2 mollies, acclimated to sea water'],
  [2, 'Florida fighting conch', '2 Florida fighting conches'],
  [2, 'foxface rabbitfish', '2 foxface rabbitfish'],
  [2, 'live copepods', '2 live copepods'],
])('%i of %s', (count, name, said) => expect(counted(count, name)).toBe(said))
