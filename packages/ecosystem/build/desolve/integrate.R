# Integrates a model written to model.R and numbers.R with deSolve (Soetaert, Petzoldt & Setzer 2010, J Stat Softw 33(9)),
# restarted at every event. Usage: Rscript integrate.R METHOD RTOL. Prints "seconds evaluations", then the states at each
# sample. Outside accounts are left out, as nothing depends on them.
library(deSolve)
source("forms.R")

# Sums of instances into the places that they name, of which several may be one.
added = function(g, places, values) {
  sums = rowsum(rep_len(values, length(places)), places, reorder = FALSE)
  at = as.integer(rownames(sums))
  g[at] = g[at] + sums[, 1]
  g
}
# The flows of each instance after each other.
rows_of = function(instances, ...) as.vector(do.call(rbind, lapply(list(...), rep_len, length.out = instances)))
source("model.R")
source("numbers.R")

words = commandArgs(trailingOnly = TRUE)
rtol = as.numeric(words[2])
bound = function(numbers, functions) list(
  gather = functions[[1]], rates = functions[[2]], first = numbers$first,
  inputs = do.call(rbind, numbers$inputs) + 1L, gathers = if (length(numbers$gathers)) do.call(rbind, numbers$gathers) + 1L)
blocks = Map(bound, run$processes, processes)
happenings = Map(bound, run$events, events)
settings = run$settings
states = run$start
inside = which(run$tolerance > 0)
evaluations = 0

scatter = function(from, to) function(by) {
  change = numeric(run$states)
  change = added(change, to[to >= 0] + 1, by[to >= 0])
  added(change, from[from >= 0] + 1, -by[from >= 0])
}
of_flows = scatter(run$from, run$to)
of_event = scatter(run$eventFrom, run$eventTo)

sums_at = function(y) {
  g = numeric(run$gathered)
  for (block in blocks) if (!is.null(block$gathers)) g = block$gather(y, settings, run$parameters, g, block$inputs, block$gathers)
  g
}
slopes = function(t, part, ...) {
  evaluations <<- evaluations + 1
  y = states
  y[inside] = part
  g = sums_at(y)
  flows = unlist(lapply(blocks, function(block) block$rates(y, settings, run$parameters, g, block$inputs)))
  list(of_flows(flows)[inside])
}
change = function(moment) for (one in moment$changes) {
  at = as.integer(one[[1]]) + 1L
  value = as.numeric(one[[3]])
  settings[at] <<- switch(one[[2]], "=" = value, "+" = max(0, settings[at] + value), "*" = settings[at] * value)
}
happen = function(moment) {
  if (moment$event < 0) return(change(moment))
  before = settings
  change(moment)
  block = happenings[[moment$event + 1]]
  amounts = numeric(run$eventFluxes)
  moved = block$rates(states, settings, run$parameters, sums_at(states), block$inputs)
  amounts[block$first + seq_along(moved)] = moved
  states <<- states + of_event(amounts)
  settings <<- before
}

kept = list()
used = function() sum(proc.time()[c("user.self", "sys.self")])
began = used()
day = 0
for (moment in c(run$moments, list(NULL))) {
  until = if (is.null(moment)) run$last else moment$day
  if (until > day) {
    due = run$samples[run$samples > day & run$samples <= until]
    times = unique(c(day, due, until))
    out = ode(states[inside], times, slopes, NULL, method = words[1], rtol = rtol,
      atol = run$tolerance[inside] * rtol / 1e-3, maxsteps = 1e6)
    if (nrow(out) < length(times)) stop("the solver gave up on day ", day)
    for (one in due) {
      full = states
      full[inside] = out[match(one, times), -1]
      kept[[length(kept) + 1]] = full
    }
    states[inside] = out[length(times), -1]
    day = until
  }
  if (!is.null(moment)) happen(moment)
}
cat(used() - began, evaluations, "\n")
for (one in kept) cat(format(one, digits = 17, trim = TRUE), "\n")
