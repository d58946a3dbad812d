"""The forms of packages/ecosystem/src/forms, written a third time, for whole arrays."""
import numpy as np


def positive(value):
    return np.maximum(value, 0.0)


def part(value, whole):
    safe = np.where(whole > 0, whole, 1.0)
    return np.where(whole > 0, value / safe, 0.0)


def monod(c, half):
    return part(c, c + half)


def q10(factor, temperature):
    return factor ** ((temperature - 25.0) / 10.0)


def warmth(factor, temperature, best):
    return np.where(temperature < best, factor ** ((temperature - best) / 10.0), 1.0)


def droop(quota, least_, fed):
    safe = np.where(quota > least_, quota, 1.0)
    between = (1.0 - least_ / safe) / (1.0 - least_ / fed)
    return np.where(quota <= least_, 0.0, np.where(quota >= fed, 1.0, between))


def freundlich(c, reference, exponent):
    bend = 0.05
    above = (np.maximum(c, bend) / reference) ** exponent
    return np.where(c <= 0, 0.0, np.where(c >= bend, above, (bend / reference) ** exponent * c / bend))


def lightSaturation(light, saturation):
    return np.tanh(light / saturation)


def selfShaded(light, depth):
    safe = np.where(depth < 1e-6, 1.0, depth)
    return np.where(depth < 1e-6, light, light * -np.expm1(-safe) / safe)


def throughCanopy(depth):
    return np.where(depth > 0, np.exp(-np.maximum(depth, 0.0)), 1.0)


def filmCover(mass, hiding):
    return -np.expm1(-3.0 * mass / hiding)


def inhibited(c, half):
    return half / (half + c)


def fallingLine(height, full, limit, least_):
    between = 1.0 - (1.0 - least_) * (height - full) / (limit - full)
    return np.where(height <= full, 1.0, np.where(height >= limit, least_, between))


def least(a, b):
    return np.minimum(a, b)


def most(a, b):
    return np.maximum(a, b)
