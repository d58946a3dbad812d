import { algalGrowth } from './algal-growth.ts'
import { growthForm } from './stands.ts'

/** The one kind with shells of silica. */
const diatoms = 'film_diatom'

export const tuftedGrowth = algalGrowth({
  id: 'algal-growth',
  title: 'Growth of tufted algae',
  says: 'Tufted algae grow by light, warmth and the scarcer of their stores of nitrogen and phosphorus, spread over free surface and thicken until they shade themselves.',
  takes: (kind) => growthForm(kind) === 'tufted',
  room: 'positive(1 - thickness)',
  // A thin stand thickens before it spreads; propagules settle on what is bare.
  cover: { changes: 'speed * least(thickness, 1) * cover * free + settled' },
})

const films = {
  room: 'positive(1 - mass / (area * fullMass)) * free',
  cover: { follows: 'filmCover(mass, area * fullMass)' },
}

export const filmGrowth = algalGrowth({
  id: 'algal-growth-of-films',
  title: 'Growth of films and mats',
  says: 'Films and mats grow as other algae do and cover ground by their mass, patch beside patch.',
  takes: (kind) => growthForm(kind) === 'film' && kind !== diatoms,
  room: films.room,
  cover: films.cover,
})

export const diatomGrowth = algalGrowth({
  id: 'algal-growth-of-diatoms',
  title: 'Growth of diatoms',
  says: 'Diatoms are a film that needs silicate for its shells and fades when that runs out.',
  takes: (kind) => kind === diatoms,
  room: films.room,
  cover: films.cover,
  silicate: true,
})

export const crustGrowth = algalGrowth({
  id: 'algal-growth-of-crusts',
  title: 'Growth of crusts',
  says: 'Crusts grow at their edge, months to a visible share; what stands over them takes their light.',
  takes: (kind) => growthForm(kind) === 'crust',
  room: 'free',
  cover: { follows: 'least(mass / (area * fullMass), 1)' },
  flat: true,
})
