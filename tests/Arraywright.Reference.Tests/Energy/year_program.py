"""A year of an array of equal panels, from label, weather and copper to kilowatt hours: an independent computation with NumPy and SciPy.

Sources: sun after J. J. Michalsky, Solar Energy 40 (1988) 227 (low-precision formulas of the Astronomical Almanac), refraction after
Saemundsson (J. Meeus, Astronomical Algorithms, 1991, ch. 15); sky after J. E. Hay and J. A. Davies 1980; glass, diode model and its law
after W. De Soto, S. A. Klein, W. A. Beckman, Solar Energy 80 (2006) 78; effective angles after M. J. Brandemuehl and W. A. Beckman, Solar
Energy 24 (1980) 511; cells after D. L. King and others, SAND2004-3535; the curve by Lambert's W (A. Jain, A. Kapoor, Solar Energy Materials
and Solar Cells 81 (2004) 269). Reads one JSON object on standard input; prints one figure a line, see the end.
"""
import json
import sys

import numpy as np
from scipy.optimize import brentq, minimize_scalar, root
from scipy.special import lambertw

ask = json.load(sys.stdin)


def sun(day2000, latitude, longitude, height):
    """Apparent elevation, elevation without refraction, azimuth (degrees) and distance (AU); days from 2000-01-01 12 h UT."""
    mean_longitude = np.radians((280.460 + 0.9856474 * day2000) % 360)
    anomaly = np.radians((357.528 + 0.9856003 * day2000) % 360)
    ecliptic = mean_longitude + np.radians(1.915 * np.sin(anomaly) + 0.020 * np.sin(2 * anomaly))
    tilt = np.radians(23.439 - 0.0000004 * day2000)
    ascension = np.arctan2(np.cos(tilt) * np.sin(ecliptic), np.cos(ecliptic))
    declination = np.arcsin(np.sin(tilt) * np.sin(ecliptic))
    sidereal = np.radians((280.46061837 + 360.98564736629 * day2000 + longitude) % 360)
    hour = sidereal - ascension
    lat = np.radians(latitude)
    elevation = np.degrees(np.arcsin(np.sin(lat) * np.sin(declination) + np.cos(lat) * np.cos(declination) * np.cos(hour)))
    azimuth = np.degrees(np.arctan2(-np.sin(hour), np.tan(declination) * np.cos(lat) - np.sin(lat) * np.cos(hour)))
    pressure = (1 - 2.25577e-5 * height) ** 5.25588
    lifted = 1.02 / 60 / np.tan(np.radians(elevation + 10.3 / (elevation + 5.11))) * pressure * 1.0033 * 283 / 285
    apparent = elevation + np.where(elevation > -0.8333, lifted, 0)
    distance = 1.00014 - 0.01671 * np.cos(anomaly) - 0.00014 * np.cos(2 * anomaly)
    return apparent, elevation, azimuth, distance


def glass(angle):
    """Light let through at an angle (degrees) as a share of straight on: refractive index 1.526, 4/m in 2 mm."""
    def through(degrees):
        inside = np.arcsin(np.sin(np.radians(degrees)) / 1.526)
        less, more = inside - np.radians(degrees), inside + np.radians(degrees)
        reflected = 0.5 * (np.sin(less) ** 2 / np.sin(more) ** 2 + np.tan(less) ** 2 / np.tan(more) ** 2)
        return np.exp(-0.008 / np.cos(inside)) * (1 - reflected)
    return np.where(angle >= 90, 0, through(np.clip(angle, 0.01, 89.999)) / through(0.01))


def plane():
    """Irradiance in the plane, what of it reaches the cells, and the cells' temperature."""
    w = {name: np.array(ask[name]) for name in ("day2000", "global", "beam", "diffuse", "air", "wind")}
    apparent, geometric, azimuth, distance = sun(w["day2000"], ask["latitude"], ask["longitude"], ask["elevation"])
    tilt, faces = ask["tilt"], ask["azimuth"]
    cos_tilt = np.cos(np.radians(tilt))
    cos_incidence = np.sin(np.radians(apparent)) * cos_tilt + np.cos(np.radians(apparent)) * np.sin(np.radians(tilt)) * np.cos(np.radians(azimuth - faces))
    incidence = np.degrees(np.arccos(np.clip(cos_incidence, -1, 1)))
    towards = np.maximum(0, cos_incidence)
    up = geometric > 0
    beam = np.where(up, w["beam"] * towards, 0)
    outside = 1361 / distance ** 2
    around = np.where(up, np.clip(w["beam"] / outside, 0, 1), 0) if ask["sky"] == "HayDavies" else 0
    cos_zenith = np.maximum(np.cos(np.radians(85)), np.sin(np.radians(np.maximum(apparent, 0))))
    circumsolar = w["diffuse"] * around * towards / cos_zenith
    sky = w["diffuse"] * (1 - around) * (1 + cos_tilt) / 2
    ground = w["global"] * ask["albedo"] * (1 - cos_tilt) / 2
    lit = w["global"] > 0
    total = np.where(lit, beam + circumsolar + sky + ground, 0)
    sky_angle = 59.7 - 0.1388 * tilt + 0.001497 * tilt ** 2
    ground_angle = 90 - 0.5788 * tilt + 0.002693 * tilt ** 2
    above = apparent >= 0
    useful = np.where(lit, (beam + circumsolar) * np.where(above, glass(incidence), 0) + sky * glass(sky_angle) + ground * glass(ground_angle), 0)
    useful = useful * (1 - ask["soiling"])
    cells = w["air"] + useful * np.exp(-3.56 - 0.0750 * w["wind"]) + useful / 1000 * 3
    return total, useful, cells


BOLTZMANN = 8.617333262e-5  # eV/K


def five_parameters(label):
    """IL, I0, Rs, Rsh, a at standard conditions: three points, the summit, and the slope of Voc as a difference over 2 K."""
    isc, voc, imp, vmp = label["isc"], label["voc"], label["imp"], label["vmp"]

    def equations(unknown):
        il, i0, rs, rsh, a = unknown[0], np.exp(unknown[1]), unknown[2], np.exp(unknown[3]), unknown[4]
        at = il, i0, rs, rsh, a
        junction = vmp + imp * rs
        conductance = i0 / a * np.exp(junction / a) + 1 / rsh
        warm, cold = (open_circuit(elsewhere(at, label, 1000, 25 + shift)) for shift in (1, -1))
        return [
            (il - i0 * np.expm1(isc * rs / a) - isc * rs / rsh - isc) / isc,
            (il - i0 * np.expm1(voc / a) - voc / rsh) / isc,
            (il - i0 * np.expm1(junction / a) - junction / rsh - imp) / isc,
            (imp - vmp * conductance / (1 + rs * conductance)) / isc,
            ((warm - cold) / 2 - label["voc_per_k"]) / label["voc_per_k"],
        ]

    for ideality in (1.0, 1.1, 0.9, 1.25):
        a = ideality * label["cells"] * BOLTZMANN * 298.15
        found = root(equations, [isc, np.log(isc) - voc / a, 0.3 * (voc - vmp) / imp, np.log(30 * voc / isc), a], tol=1e-13)
        if found.success and max(abs(np.array(equations(found.x)))) < 1e-9:
            return found.x[0], np.exp(found.x[1]), found.x[2], np.exp(found.x[3]), found.x[4]
    raise ValueError("no five parameters found")


def elsewhere(at, label, irradiance, celsius):
    il, i0, rs, rsh, a = at
    kelvin, ratio = celsius + 273.15, (celsius + 273.15) / 298.15
    gap = 1.121 * (1 - 0.0002677 * (celsius - 25))
    light = irradiance / 1000 * (il + label["isc_per_k"] * (celsius - 25))
    return light, i0 * ratio ** 3 * np.exp((1.121 / 298.15 - gap / kelvin) / BOLTZMANN), rs, rsh * 1000 / irradiance, a * ratio


def open_circuit(p):
    il, i0, _, rsh, a = p
    return brentq(lambda v: il - i0 * np.expm1(v / a) - v / rsh, 0, a * np.log(il / i0 + 1) + 1e-6, xtol=1e-13)


def current(p, v):
    """Explicit current of the single-diode model at a voltage."""
    il, i0, rs, rsh, a = p
    both = rs + rsh
    argument = rs * i0 * rsh / (a * both) * np.exp(rsh * (rs * (il + i0) + v) / (a * both))
    return (rsh * (il + i0) - v) / both - a / rs * lambertw(argument).real


def hour(at, label, irradiance, celsius):
    """Watts at the maximum and watts taken by the input, of one hour."""
    rows, strings, contact = ask["in_series"], ask["strings"], ask["contact_ohm"]
    # IEC 60228 class 5, tinned, of 4 mm2: 5.09 ohm/km at 20 C, at a conductor of 50 C.
    copper = 4 * 5.09e-3 * (1 + 0.00393 * 30)
    run = 2 * ask["length_m"] * copper / ask["area_mm2"] + contact
    own = 2 * ask["string_length_m"] * copper / ask["string_area_mm2"] + contact + rows * contact
    il, i0, rs, rsh, a = elsewhere(at, label, irradiance, celsius)
    p = il, i0, rs + (own + strings * run) / rows, rsh, a
    voc = open_circuit(p)

    def watts(v):
        return rows * v * strings * current(p, v)

    best = minimize_scalar(lambda v: -watts(v), bounds=(0, voc), method="bounded", options={"xatol": 1e-7 * voc})
    low, high, most = ask["min_v"] / rows, min(ask["max_v"] / rows, voc), ask["max_a"] / strings
    if rows * voc < max(ask["start_v"], ask["min_v"]):
        return -best.fun, 0
    if current(p, low) > most:
        low = brentq(lambda v: current(p, v) - most, low, voc)
    taken = -best.fun if low <= best.x <= high else watts(low if best.x < low else high)
    return -best.fun, min(taken, ask["max_w"])


total, useful, cells = plane()
print(total.sum() / 1000)
print(useful.sum() / 1000)
print((useful * cells).sum() / useful.sum())
label = ask["label"]
at = five_parameters(label)
for irradiance, celsius in ((useful, cells), (np.array(ask["useful"]), np.array(ask["cell"]))):
    hours = np.array([hour(at, label, g, c) if g >= 1 else (0, 0) for g, c in zip(irradiance, celsius)])
    print(hours[:, 0].sum() / 1000)
    print(hours[:, 1].sum() / 1000)
