"""Reads lines as JSON and answers with what scikit-rf finds: input impedance and loss in dB of each."""

import json
import sys

import numpy as np
import skrf
from skrf.media import DefinedGammaZ0

LIGHT = 299792458.0
DB_PER_NEPER = 20 / np.log(10)


def frequency(line):
    return skrf.Frequency(line["hertz"], line["hertz"], 1, "hz")


def from_networks(line):
    """A line of real Z0 as a network before a load: loss is net power in over net power out (operating gain)."""
    z0, load = line["z0"], complex(line["load"]["re"], line["load"]["im"])
    alpha = line["lossDbPer100m"] / 100 / DB_PER_NEPER
    beta = 2 * np.pi * line["hertz"] / (line["velocityFactor"] * LIGHT)
    medium = DefinedGammaZ0(frequency=frequency(line), z0=z0, gamma=alpha + 1j * beta)
    two_port = medium.line(line["lengthM"], "m")
    gamma_load = (load - z0) / (load + z0)
    gamma_in = (two_port ** medium.load(gamma_load)).s[0, 0, 0]
    s = two_port.s[0]
    gain = abs(s[1, 0]) ** 2 * (1 - abs(gamma_load) ** 2)
    gain /= (1 - abs(gamma_in) ** 2) * abs(1 - s[1, 1] * gamma_load) ** 2
    return z0 * (1 + gamma_in) / (1 - gamma_in), -10 * np.log10(gain)


def answer(line):
    zin, loss = from_networks(line)
    return {"zin": [zin.real, zin.imag], "loss": loss}


print(json.dumps([answer(line) for line in json.load(sys.stdin)]))
