# The forms of packages/ecosystem/src/forms, written a fourth time, for whole arrays.
positive = function(value) pmax(value, 0)
part = function(value, whole) ifelse(whole > 0, value / whole, 0)
monod = function(c, half) part(c, c + half)
q10 = function(factor, temperature) factor^((temperature - 25) / 10)
warmth = function(factor, temperature, best) ifelse(temperature < best, factor^((temperature - best) / 10), 1)
droop = function(quota, least_, fed)
  ifelse(quota <= least_, 0, ifelse(quota >= fed, 1, (1 - least_ / quota) / (1 - least_ / fed)))
freundlich = function(c, reference, exponent) {
  bend = 0.05
  above = (pmax(c, bend) / reference)^exponent
  ifelse(c <= 0, 0, ifelse(c >= bend, above, (bend / reference)^exponent * c / bend))
}
lightSaturation = function(light, saturation) tanh(light / saturation)
selfShaded = function(light, depth) ifelse(depth < 1e-6, light, light * -expm1(-depth) / depth)
throughCanopy = function(depth) exp(-pmax(depth, 0))
filmCover = function(mass, hiding) -expm1(-3 * mass / hiding)
inhibited = function(c, half) half / (half + c)
fallingLine = function(height, full, limit, least_)
  ifelse(height <= full, 1, ifelse(height >= limit, least_, 1 - (1 - least_) * (height - full) / (limit - full)))
least = function(a, b) pmin(a, b)
most = function(a, b) pmax(a, b)
