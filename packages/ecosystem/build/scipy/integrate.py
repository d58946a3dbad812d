"""Integrates a model written to model.py and numbers.json with SciPy (Virtanen et al. 2020, Nature Methods
17:261), restarted at every event. Usage: integrate.py METHOD RTOL. Prints one JSON document: seconds,
evaluations, samples. Outside accounts are left out, as nothing depends on them."""
import json
import sys
import time
import warnings

import numpy as np
from scipy.integrate import solve_ivp

import model

warnings.filterwarnings("ignore")
method, rtol = sys.argv[1], float(sys.argv[2])
with open("numbers.json") as file:
    run = json.load(file)


def bound(numbers, functions):
    gather, rates = functions
    inputs = np.array(numbers["inputs"], dtype=int)
    gathers = np.array(numbers["gathers"], dtype=int)
    return gather, rates, inputs, gathers, numbers["first"]


processes = [bound(*both) for both in zip(run["processes"], model.processes)]
events = [bound(*both) for both in zip(run["events"], model.events)]
settings = np.array(run["settings"])
parameters = np.array(run["parameters"])
tolerance = np.array(run["tolerance"])
inside = np.flatnonzero(tolerance > 0)
states = np.array(run["start"])
gathered = np.zeros(run["gathered"])
flows = np.zeros(run["fluxes"])
count = run["states"]
evaluations = 0


class Scatter:
    def __init__(self, source, target):
        self.source, self.target = np.array(source), np.array(target)
        self.leaves, self.enters = self.source >= 0, self.target >= 0
        self.source, self.target = self.source[self.leaves], self.target[self.enters]

    def __call__(self, by):
        return np.bincount(self.target, by[self.enters], minlength=count) - np.bincount(
            self.source, by[self.leaves], minlength=count
        )


scatter = Scatter(run["from"], run["to"])
scatter_event = Scatter(run["eventFrom"], run["eventTo"])


def fill(blocks, y, out, firsts):
    for (gather, rates, inputs, gathers, first), (start, rows, columns) in zip(blocks, firsts):
        rates(y, settings, parameters, gathered, inputs, out[start : start + rows * columns].reshape(rows, columns))


def firsts(blocks, total):
    starts = [block[4] for block in blocks] + [total]
    return [
        (start, len(block[2]), (following - start) // max(1, len(block[2])))
        for block, start, following in zip(blocks, starts, starts[1:])
    ]


process_firsts = firsts(processes, run["fluxes"])
event_firsts = firsts(events, run["eventFluxes"])


def add_up(y):
    gathered[:] = 0
    for gather, rates, inputs, gathers, first in processes:
        if gathers.size:
            gather(y, settings, parameters, gathered, inputs, gathers)


def derivative(_, part):
    global evaluations
    evaluations += 1
    y = states.copy()
    y[inside] = part
    add_up(y)
    fill(processes, y, flows, process_firsts)
    return scatter(flows)[inside]


def change(moment):
    for slot, sign, value in moment["changes"]:
        if sign == "=":
            settings[slot] = value
        elif sign == "+":
            settings[slot] = max(0.0, settings[slot] + value)
        else:
            settings[slot] *= value


def happen(moment):
    if moment["event"] < 0:
        change(moment)
        return
    before = settings.copy()
    change(moment)
    amounts = np.zeros(run["eventFluxes"])
    which = moment["event"]
    add_up(states)
    fill([events[which]], states, amounts, [event_firsts[which]])
    states[:] = states + scatter_event(amounts)
    settings[:] = before


samples, wanted = [], list(run["samples"])
began = time.process_time()
day = 0.0
for moment in run["moments"] + [None]:
    until = run["last"] if moment is None else moment["day"]
    if until > day:
        due = [sample for sample in wanted[len(samples) :] if sample <= until]
        solution = solve_ivp(
            derivative,
            (day, until),
            states[inside],
            method=method,
            rtol=rtol,
            atol=tolerance[inside] * rtol / 1e-3,
            t_eval=due + ([] if due and due[-1] == until else [until]),
        )
        if not solution.success:
            sys.exit(solution.message)
        for k in range(len(due)):
            full = states.copy()
            full[inside] = solution.y[:, k]
            samples.append(full.tolist())
        states[inside] = solution.y[:, -1]
        day = until
    if moment is not None:
        happen(moment)
seconds = time.process_time() - began
json.dump({"seconds": seconds, "evaluations": evaluations, "samples": samples}, sys.stdout)
