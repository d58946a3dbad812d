import { Figure } from '../../figure/figure.tsx'
import { TableLine } from '../../figure/line.tsx'
import { Tuft } from '../tuft.tsx'
import { growthFigure, leftFigure, type ReachGround } from './figures.ts'
import { byWhom, kindName, placeName } from './words.ts'

/** Places of which less than this share of all growth grows are told together. */
const little = 0.003

/** What the picture shows, the most exposed place first. */
export function ReachTable({ ground }: { readonly ground: ReachGround }) {
  const { places, grazers } = ground.told.reach
  const names = new Map(grazers.map(({ taxon, tradeName }) => [taxon, tradeName]))
  const grown = places.reduce((sum, { growth_g_week }) => sum + growth_g_week.value, 0)
  const told = places.filter(({ growth_g_week }) => growth_g_week.value > little * grown)
  return (
    <>
      <div class="scrolls" tabIndex={0} role="region" aria-label="Growth and grazing, table">
        <table class="ledger reach-table">
          <caption>The coming week, the most exposed place first</caption>
          <thead>
            <tr>
              <th scope="col">Where</th>
              <th scope="col" class="wide">
                What
              </th>
              <th scope="col">Grows</th>
              <th scope="col">Nobody eats</th>
              <th scope="col" class="wide">
                Eaten by
              </th>
            </tr>
          </thead>
          <tbody>
            {told.map((place) => {
              const figures = [growthFigure(place, ground), leftFigure(place, ground)]
              return (
                <TableLine key={`${placeName(place)} ${place.kind}`} figures={figures} columns={5}>
                  <th scope="row">
                    {placeName(place)}
                    <small class="narrow">
                      <Tuft algae={place.kind} /> {kindName(place.kind)}: {byWhom(place, names)}
                    </small>
                  </th>
                  <td class="wide">
                    <Tuft algae={place.kind} />
                    {kindName(place.kind)}
                  </td>
                  {figures.map((figure) => (
                    <td key={figure.id}>
                      <Figure of={figure} />
                    </td>
                  ))}
                  <td class="wide">{byWhom(place, names)}</td>
                </TableLine>
              )
            })}
          </tbody>
        </table>
      </div>
      {told.length < places.length && (
        <p class="quiet">
          On {places.length - told.length} more {places.length - told.length === 1 ? 'place' : 'places'} next
          to nothing grows.
        </p>
      )}
    </>
  )
}
