"""Nitrification, phosphate on carbonate sand and on ferric media, typed by hand from how the papers state them and
not from the declarations: an export would share our mistakes. Reads a question from standard input, solves it
with SciPy, prints the concentrations on the days asked for.

Nitrification in two steps, each by two groups that grow on what they oxidise (Monod 1949), behind a film of water
with a transfer velocity, on a surface with room for a largest density (Nijhof & Bovendeur 1990). Sorption on two kinds
of sites with a common Freundlich isotherm, fast and slow, driven by the distance from it (So et al. 2011). Media with
a Freundlich isotherm and a linear driving force, fed by the flow through the bed (Golterman 1995)."""
import json
import sys

import numpy as np
from scipy.integrate import solve_ivp

asked = json.load(sys.stdin)
k, tank = asked["facts"], asked["tank"]
litres, sand, area = tank["litres"], tank["sand_kg"], tank["porous_m2"]
warm = k["nit.q10"] ** ((tank["celsius"] - 25.0) / 10.0)
media = {"grams": tank["media_g"]}

AMMONIA, NITRITE, NITRATE, PHOSPHATE, FAST, SLOW, MEDIA = range(7)
QUICK_A, PATIENT_A, QUICK_B, PATIENT_B = range(7, 11)
names = [
    "water.ammonia/N", "water.nitrite/N", "water.nitrate/N", "water.phosphate/P", "rock.sorbed-fast/P",
    "rock.sorbed-slow/P", "media.ferric/P", "rock.oxidisers-fast/N", "rock.oxidisers-slow/N",
    "rock.nitrite-oxidisers-fast/N", "rock.nitrite-oxidisers-slow/N",
]  # fmt: skip


def isotherm(c, at, exponent):
    """Load relative to that at a reference; straight to zero below 0.05 umol/L."""
    if c <= 0:
        return 0.0
    if c < 0.05:
        return (0.05 / at) ** exponent * c / 0.05
    return (c / at) ** exponent


def group(cells, substrate, fastest, half, growth):
    """Nitrogen oxidised in a day: the cells' own speed and the water film as resistances in a row."""
    speed = fastest * warm * cells / growth
    film = k["coral.s_nh4"] * area
    return speed * substrate / (substrate + half + speed / film)


def step(y, t_from, quick, patient, own, others, growth):
    substrate = max(y[t_from], 0.0) / litres
    most = k["nit.areal.max_sea"] * sand * k["nit.area.sand"] * growth / k[own + ".mumax"]
    room = max(0.0, 1.0 - (y[quick] + y[patient]) / most)
    first = group(y[quick], substrate, k[own + ".mumax"], k[own + ".ks"], growth)
    second = group(y[patient], substrate, k[others + ".mumax"], k[others + ".ks"], growth)
    return first, second, growth * room


def slope(_, y):
    d = np.zeros(11)
    for source, into, quick, patient, own, others, growth in (
        (AMMONIA, NITRITE, QUICK_A, PATIENT_A, "nit.aob", "nit.aoa", k["nit.aob.yield_n"]),
        (NITRITE, NITRATE, QUICK_B, PATIENT_B, "nit.nob", "nit.nob_poor", k["nit.nob.yield_n"]),
    ):
        first, second, kept = step(y, source, quick, patient, own, others, growth)
        d[source] -= first + second
        d[quick] += kept * first
        d[patient] += kept * second
        d[into] += (1.0 - kept) * (first + second)
    c = max(y[PHOSPHATE], 0.0) / litres
    full = sand * k["sorb.kd.sand"] * isotherm(c, 1.0, k["sorb.freundlich.n"])
    reach = k["coral.s_po4"] * area * c
    share = k["sorb.fast_share"]
    fast = min(k["sorb.k_fast"] * (share * full - y[FAST]), reach)
    slow = min(k["sorb.k_slow"] * ((1.0 - share) * full - y[SLOW]), reach)
    load = media["grams"] * k["fe.load_ref"] * isotherm(c, 300.0 / 30.973762, k["fe.freundlich.n"])
    taken = min(k["fe.klump"] * (load - y[MEDIA]), tank["media_flow"] * c)
    d[PHOSPHATE] -= fast + slow + taken
    d[FAST] += fast
    d[SLOW] += slow
    d[MEDIA] += taken
    return d


def happen(event, y):
    """What the keeper did, in moles: NH4Cl 53.49 g/mol, KH2PO4 136.09 g/mol."""
    if event["kind"] == "dose":
        if event["substance"] == "ammonium chloride":
            y[AMMONIA] += event["mass_g"] / 53.49 * 1e6
        else:
            y[PHOSPHATE] += event["mass_g"] / 136.09 * 1e6
    elif event["kind"] == "water change":
        y[AMMONIA : PHOSPHATE + 1] *= 1.0 - event["volume_L"] / litres
    elif event["kind"] == "media placed":
        y[MEDIA] = 0.0
        media["grams"] = event["mass_g"]


y = np.array([asked["start"][name] for name in names])
days, day, course = asked["days"], 0.0, []
for event in asked["events"] + [None]:
    until = days[-1] if event is None else event["day"]
    due = [one for one in days if day < one <= until] + ([0.0] if day == 0.0 and not course else [])
    due = sorted(due)
    if until > day:
        at = sorted(set(due + [until]))
        solved = solve_ivp(slope, (day, until), y, method="LSODA", rtol=1e-10, atol=1e-7, t_eval=at)
        for one in due:
            course.append(solved.y[:, at.index(one)].tolist())
        y = solved.y[:, -1].copy()
        day = until
    if event is not None:
        happen(event, y)
json.dump({name: [row[i] for row in course] for i, name in enumerate(names)}, sys.stdout)
