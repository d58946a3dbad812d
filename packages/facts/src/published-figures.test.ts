import { describe, expect, test } from 'vitest'
import { algaeKind, fact, grazer, grazers } from './index.ts'

const spans = (id: string, value: number) => {
  const { low, high } = fact(id)
  expect(value, `${id} ${low} to ${high}`).toBeGreaterThanOrEqual(low)
  expect(value, `${id} ${low} to ${high}`).toBeLessThanOrEqual(high)
}

describe('feeding', () => {
  test('pellet N is 0.16 of crude protein, the Kjeldahl factor of 6.25', () => {
    const { typical: ofProtein } = fact('feed.protein_to_n')
    expect(ofProtein).toBe(1 / 6.25)
    expect(fact('feed.pellet.n').typical).toBeCloseTo(fact('feed.pellet.protein').typical * ofProtein, 3)
  })

  test('frozen mysids: the declared analysis of 82.27 % water and 10.46 % protein (read) lies in the spread', () => {
    spans('feed.mysis.dry', 1 - 0.8227)
    spans('feed.mysis.n', 0.1046 / 6.25)
  })

  test('the two ways to the N of thawed mysids agree within 5 %', () => {
    const dry = fact('feed.mysis.dry').typical * fact('feed.mysis.n_dry').typical
    expect(dry / fact('feed.mysis.n').typical).toBeCloseTo(1, 1)
    expect(Math.abs(dry / fact('feed.mysis.n').typical - 1)).toBeLessThan(0.05)
  })

  test('dried laver of 32.2 to 36.9 % protein (Hwang, Ki & Chung 2013, read) lies in the spread of nori', () => {
    spans('feed.nori.n', 0.322 / 6.25)
    spans('feed.nori.n', 0.369 / 6.25)
  })

  test('an adult damselfish kept 0.5 % of N and 0.2 % of C (Polunin & Brothers 1989, read)', () => {
    spans('fish.retain_n.adult', 0.005)
    spans('fish.retain_c.adult', 0.002)
  })

  test('over half of faecal P is in the water within a day (Meyer & Schultz 1985, read)', () => {
    expect(fact('min.leach_p.faeces').typical).toBeGreaterThanOrEqual(0.5)
  })

  test('faecal shares of Wang et al. 2012 (N 15 %, C 19 %; memory) lie in the spreads of digestion', () => {
    spans('fish.digest_n', 0.85)
    spans('fish.digest_c', 0.81)
  })
})

describe('what fish give off, reckoned from what they digest, keep and leach', () => {
  const of = (id: string): number => fact(id).typical
  const [N, P] = [of('feed.pellet.n') / 14.007, of('feed.pellet.p') / 30.974]
  const leached = of('min.leach_p.faeces')

  test('growing fish excrete 0.4 to 0.85 of the N they eat (Wang et al. 2012, memory)', () => {
    spans('fish.excrete_n.fed', of('fish.digest_n') - of('fish.retain_n.growing'))
  })

  test('a farm makes 0.092 g of ammonia N per g of protein fed (Timmons & Ebeling, memory)', () => {
    const eaten = 1 - of('feed.uneaten.farm')
    const excreted = of('fish.digest_n') - of('fish.retain_n.growing')
    spans('fish.tan_rule', (eaten * excreted) / 6.25)
  })

  test('dissolved N:P of grown fish on pellets lies between the feed and that of juveniles (Meyer & Schultz 1985)', () => {
    const excretedN = of('fish.digest_n') - of('fish.retain_n.adult')
    const excretedP = of('fish.digest_p') - of('fish.retain_p.adult') + (1 - of('fish.digest_p')) * leached
    spans('fish.excretion_np', (N * excretedN) / (P * excretedP))
  })

  test('faeces have an N:P of 4 to 15 (Meyer & Schultz 1985: 8, read)', () => {
    spans('fish.faeces_np', (N * (1 - of('fish.digest_n'))) / (P * (1 - of('fish.digest_p')) * (1 - leached)))
  })
})

describe('decay and nitrification', () => {
  test('fast and slow detritus: 24 and 1.4 per year (Westrich & Berner 1984, memory)', () => {
    spans('min.detritus.k_fast', 24 / 365.25)
    expect(fact('min.detritus.k_slow').typical).toBeCloseTo(1.4 / 365.25, 3)
  })

  test('one new cell per 54 N and per 400 N oxidised (US EPA 1975, memory)', () => {
    expect(fact('nit.aob.yield_n').typical).toBeCloseTo(1 / 54, 4)
    expect(fact('nit.nob.yield_n').typical).toBeCloseTo(1 / 400, 4)
  })

  test('archaea are half saturated at 0.133 µmol/L in culture (Martens-Habbena et al. 2009, read): the low end', () => {
    expect(fact('nit.aoa.ks').low).toBeCloseTo(0.133, 2)
  })

  test('sea water biofilm oxidised 0.28 g N per m² and day (Nijhof & Bovendeur 1990, read)', () => {
    expect(fact('nit.areal.max_sea').typical).toBe(0.28)
  })

  test('nitrite oxidisers double in 23 to 90 h (Watson et al. 1986, memory)', () => {
    spans('nit.nob.mumax', (Math.LN2 / 23) * 24)
    expect((Math.LN2 / 90) * 24).toBeCloseTo(fact('nit.nob.mumax').low, 1)
  })

  test('live rock took up 0.141 mg ammonium per kg and hour (Li et al. 2017, read): area times 1 mmol per m² and day', () => {
    expect(fact('nit.live_rock')).toMatchObject({ typical: 0.141, unit: 'mg NH4 kg⁻¹ h⁻¹' })
    spans('nit.area.rock', (fact('nit.live_rock').typical * 24) / 18.04)
  })
})

describe('rock, foam, media and flow', () => {
  test('foam takes 20 to 35 % of organic carbon (Feldman et al. 2009, 2010, read)', () => {
    expect(fact('foam.share.toc')).toMatchObject({ low: 0.2, high: 0.35 })
  })

  test('calcite takes phosphate up to 95 % in 2 to 3 h (Sø et al. 2011, read): 24 to 36 per day', () => {
    spans('sorb.k_fast', -Math.log(0.05) / (3 / 24))
    spans('sorb.k_fast', -Math.log(0.05) / (2 / 24))
  })

  test('iron hydroxide takes phosphate with a power of one third (Golterman 1995, read)', () => {
    expect(fact('fe.freundlich.n').typical).toBeCloseTo(1 / 3, 2)
  })

  test('at most some 10 mg P/g in enriched sea water (J Colloid Interface Sci 2006, read)', () => {
    expect(fact('fe.load_ref').high).toBe(10)
  })

  test('reef communities: 16 to 144 times 1e-6 m/s for ammonium (Thomas & Atkinson 1997, read)', () => {
    expect(fact('coral.s_nh4').low).toBeCloseTo(16e-6 * 86400, 1)
    expect(fact('coral.s_nh4').high).toBeCloseTo(144e-6 * 86400, 1)
  })
})

describe('organic carbon', () => {
  test('5/12 mol of ethanol denitrify a mol of nitrate without growth (arithmetic): the low end of need', () => {
    expect(fact('cd.den_ethanol').low).toBeCloseTo(((5 / 12) * 46.07) / 14.007, 1)
  })

  test('0.411 g of carbon in a mL of ethanol is 0.789 g at 52.1 % (arithmetic); sugar has 40 %', () => {
    expect(fact('cd.density.ethanol').typical).toBeCloseTo((0.789 * 2 * 12.011) / 46.07, 3)
    expect(fact('cd.c.glucose').typical).toBeCloseTo((6 * 12.011) / 180.16, 3)
    expect(fact('cd.c.acetate').typical).toBeCloseTo((2 * 12.011) / 82.03, 3)
    expect(fact('cd.c.phb').typical).toBeCloseTo((4 * 12.011) / 86.09, 3)
  })

  test('bacteria of C:N 4 to 7 (Fagerbakke et al. 1996, memory) are the fed quota turned over', () => {
    const { low, high } = fact('cd.quota_N_fed')
    expect(1 / high).toBe(4)
    expect(1 / low).toBeCloseTo(7, 0)
  })
})

describe('algae', () => {
  test('a screen of N:P 31 (Adey et al. 2013, read) is poorer in P than pellets of 14', () => {
    const ratio = (n: string, p: string) => fact(n).typical / 14.007 / (fact(p).typical / 30.974)
    expect(ratio('turf.n', 'turf.p')).toBeCloseTo(30.3, 1)
    expect(ratio('feed.pellet.n', 'feed.pellet.p')).toBeCloseTo(13.8, 1)
  })

  test('27.7 to 120 mg chlorophyll per m² (Montani, Magni & Abe 2003, read), C:chl 40, 25 % C, is a full film', () => {
    spans('algae.film_diatom.full_cover_mass', (27.7 * 40) / 0.25 / 1000)
    spans('algae.film_diatom.full_cover_mass', (120 * 40) / 0.25 / 1000)
  })

  test('Ostreopsis divides 1.03 times a day at best, at 25 °C, and over once up to 30 °C (Phycological Research 2012, read)', () => {
    expect(fact('algae.dino.growth').high).toBeCloseTo(1.03 * Math.LN2, 1)
    expect(algaeKind('dino').temperatureBest).toBeGreaterThanOrEqual(25)
    expect(algaeKind('dino').temperatureBest).toBeLessThanOrEqual(30)
  })

  test('Caulerpa prolifera: 0.09 per day, N from 1.71 to 5.2 % of dry (Malta et al. 2005, read)', () => {
    spans('algae.caulerpa.growth', 0.09)
    spans('algae.caulerpa.quota_N_max', 0.052)
    spans('algae.caulerpa.quota_N_min', 0.0136) // C. taxifolia, poor water (read)
  })

  test('a Lyngbya bloom stood at 115 g dry per m² in the mean (Ahern et al. 2007, read)', () => {
    spans('algae.cyano.full_cover_mass', 115)
  })

  test('Dictyota gained 60 % in 3 days on reef water (Coral Reefs 2016, 35:669, read)', () => {
    spans('algae.macro.growth', Math.log(1.6) / 3)
  })

  test('a crust of 5 mm whose edge moves 0.05 mm a day grows 0.02 per day (Adey & Vassar 1975 give 0.9 to 2.3 mm a month, read)', () => {
    spans('algae.coralline.growth', (2 * 0.05) / 5)
    spans('algae.coralline.growth', (2 * (2.3 / 30)) / 5)
  })
})

describe('grazers', () => {
  test('turban snails eat 1.06 to 6.08 % of their mass a day as wet algae (Foster & Hodgson 1998, read), 12 % dry', () => {
    const turbans = grazers().filter(({ taxon }) => taxon.startsWith('Turbo '))
    expect(turbans.length).toBeGreaterThan(2)
    for (const { consumption, wetMass_g } of turbans) {
      const share = consumption.typical / 0.12 / wetMass_g
      expect(share).toBeGreaterThan(0.0106)
      expect(share).toBeLessThan(0.0608)
    }
  })

  test('the high end of a yellow tang is 0.0342 M^0.816 g C (van Rooij et al. 1998, read) at 22.6 % C in food', () => {
    const tang = grazer('Zebrasoma flavescens')
    const high = (0.0342 * 85 ** 0.816) / 0.226
    expect(tang?.consumption.high).toBeGreaterThan(0.98 * high)
    expect(tang?.consumption.high).toBeLessThan(1.02 * high)
  })

  // The coefficients are those of the rules in consumption-rules.json; slow home-rangers carry a factor of their own.
  test.each([
    ['snail', 17, (mass: number) => 0.008 * mass ** 0.75],
    ['fish', 28, (mass: number) => 0.05 * mass ** 0.817],
    ['urchin', 7, (mass: number) => 0.0279 * mass ** 0.67],
  ] as const)('figures by the rule of the %s follow from mass within 2 %', (rule, count, expected) => {
    const plain = grazers().filter((one) => one.consumptionRule === rule && one.consumptionNote === undefined)
    expect(plain.length).toBe(count)
    for (const { consumption, wetMass_g, taxon } of plain) {
      expect(Math.abs(consumption.typical / expected(wetMass_g) - 1), taxon).toBeLessThan(0.02)
    }
  })

  test('amphipods eat some 14 to 84 % of their mass a day as wet plants (Berezina, read), 12 % dry', () => {
    const amphipod = grazer('Elasmopus spp.')
    const share = (amphipod?.consumption.typical ?? 0) / 0.12 / (amphipod?.wetMass_g ?? 1)
    expect(share).toBeGreaterThan(0.14)
    expect(share).toBeLessThan(0.84)
  })
})
