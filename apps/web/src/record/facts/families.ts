/** What a fact is about, by the first word of its id; the select of the page and the line of a fact say it. */
const families: Readonly<Record<string, string>> = {
  alg: 'Algae',
  algae: 'Algae',
  ammonia: 'Ammonia to the air',
  band: 'Where corals are kept',
  cd: 'Organic carbon dosing',
  coral: 'Corals and water at surfaces',
  crew: 'Crew',
  den: 'Denitrification',
  diatom: 'Diatoms',
  doc: 'Dissolved organics',
  evap: 'Evaporation',
  fe: 'Ferric media',
  feed: 'Feeds',
  fish: 'Fish',
  foam: 'Foam fractionation',
  gac: 'Activated carbon',
  grazing: 'Grazing',
  kit: 'Kits',
  la: 'Lanthanum binder',
  leach: 'Leaching of rock',
  mech: 'Mechanical filters',
  min: 'Mineralisation',
  nit: 'Nitrification',
  outlook: 'Outlook',
  oxygen: 'Oxygen',
  patch: 'Patches of a surface',
  rock: 'Rock',
  sand: 'Sand',
  si: 'Silicate',
  sorb: 'Phosphate on carbonate',
  start: 'The first day',
  surface: 'Surfaces',
  survey: 'Surveys',
  turf: 'Turf scrubber',
  unexplained: 'Not explained yet',
  uv: 'Ultraviolet lamp',
  water: 'Water',
  wc: 'Water changes',
}

/** The family of a fact, such as foam.k.tank; a family without a name yet goes by the word of its ids. */
export function familyOf(id: string): string {
  const [first = id] = id.split('.')
  return families[first] ?? first
}
