"""Pipes, circuits, pumps; flow in gpm, head in ft of fluid."""

import numpy as np
from fluids import visc, rho

ID = {"3/4": 0.859, "1": 1.076, "1-1/4": 1.358, "1-1/2": 1.555, "2": 1.943}  # SDR 11
GAL100 = {"3/4": 3.01, "1": 4.72, "1-1/4": 7.53, "1-1/2": 9.86, "2": 15.4}
GRID = np.concatenate([np.linspace(0, 1, 11), np.linspace(1.2, 12, 55), np.linspace(12.5, 60, 96)])


def reynolds(q, size, f, t):
    d = ID[size] * 0.0254
    v = q * 6.309e-5 / (np.pi * d * d / 4)
    return rho(f.kind, f.vol, t) * v * d / visc(f.kind, f.vol, t)


def velocity(q, size):
    d = ID[size] / 12
    return q * 0.002228 / (np.pi * d * d / 4)


def pipe_loss(q, size, length, f, t, fittings=1.08):
    q = np.asarray(q, float)
    d = ID[size] / 12
    v = velocity(q, size)
    re = np.maximum(reynolds(q, size, f, t), 1)
    lam = 64 / re
    tur = 0.25 / np.log10(5e-6 / d / 3.7 + 5.74 / np.maximum(re, 2300) ** 0.9) ** 2
    w = np.clip((re - 2300) / 1700, 0, 1)
    return ((1 - w) * lam + w * tur) * length / d * v * v / 64.35 * fittings


class Circuits:
    """Parallel circuits, each with extra k (ft/gpm^2) and an air column (ft) it must lift over."""

    def __init__(self, lens, size, f, t, k=None, air=None, reach=None):
        n = len(lens)
        k = np.zeros(n) if k is None else k
        air = np.zeros(n) if air is None else air
        reach = np.zeros(n) if reach is None else reach  # extra header length seen by that circuit
        self.h = [
            pipe_loss(GRID, size, lens[i] + reach[i], f, t) + np.minimum(k[i], 1e4) * GRID**2
            for i in range(n)
        ]
        self.air, self.closed = air, [x > 9e3 for x in k]

    def split(self, head):
        out = []
        for h, a, cl in zip(self.h, self.air, self.closed):
            e = np.maximum(np.asarray(head, float) - a, 0)
            out.append(np.zeros_like(e) if cl else np.interp(e, h, GRID))
        return np.array(out)

    def solve_table(self):
        hh = np.concatenate([[0], np.geomspace(0.02, 250, 160)])
        q = self.split(hh).sum(axis=0)
        return q, hh

    def head(self, q):
        Q, H = self.solve_table()
        return np.interp(q, Q, H)


def pump_head(q, h0, qm, scale=1.0, speed=1.0):
    q = np.asarray(q, float)
    return np.maximum(scale * h0 * speed**2 * (1 - np.clip(q / (qm * speed), 0, 1.2) ** 1.9), -h0)


def meet(f_sys, f_pump, qmax):
    q = np.linspace(0.0, qmax, 700)
    d = f_pump(q) - f_sys(q)
    i = np.where(d < 0)[0]
    if len(i) == 0:
        return float(q[-1])
    j = i[0]
    if j == 0:
        return 0.0
    return float(q[j - 1] + (q[j] - q[j - 1]) * d[j - 1] / (d[j - 1] - d[j]))
