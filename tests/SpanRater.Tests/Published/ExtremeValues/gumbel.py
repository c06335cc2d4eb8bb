"""Makes gumbel-fits.csv: Gumbel distributions of largest values fitted by scipy, by maximum likelihood.

Return levels are by scipy's quantile function. The standard error of a level comes from no formula for it: the expected information of
(location, scale) is integrated over the density, turned round, and carried to the level by numerical slopes.
"""
import numpy as np
from scipy import integrate, stats

SAMPLES = {
    "days of trucks": (40, 61.3, 7.9, 11),
    "narrow": (30, 1000.0, 2.5, 12),
    "wide": (120, 15.0, 22.0, 13),
}


def log_density(x, location, scale):
    z = (x - location) / scale
    return -np.log(scale) - z - np.exp(-z)


def information(location, scale):
    step = [1e-4 * scale, 1e-4 * scale]

    def second(x, i, j):
        def at(di, dj):
            p = [location, scale]
            p[i] += di * step[i]
            p[j] += dj * step[j]
            return log_density(x, *p)
        if i == j:
            return (at(1, 0) - 2 * at(0, 0) + at(-1, 0)) / step[i] ** 2
        return (at(1, 1) - at(1, -1) - at(-1, 1) + at(-1, -1)) / (4 * step[i] * step[j])

    def expected(i, j):
        f = lambda x: -second(x, i, j) * np.exp(log_density(x, location, scale))
        return integrate.quad(f, location - 4.5 * scale, location + 40 * scale, limit=400)[0]

    return np.array([[expected(0, 0), expected(0, 1)], [expected(0, 1), expected(1, 1)]])


with open("gumbel-fits.csv", "w", encoding="utf-8", newline="\n") as out:
    out.write("name,blocks,location,scale,level,standard error,maxima\n")
    for name, (count, location, scale, seed) in SAMPLES.items():
        maxima = np.round(stats.gumbel_r.rvs(location, scale, size=count, random_state=np.random.RandomState(seed)), 1)
        fit_location, fit_scale = stats.gumbel_r.fit(maxima)
        blocks = 75 * 365
        part = 1 - 1 / blocks
        level = stats.gumbel_r.ppf(part, fit_location, fit_scale)
        covariance = np.linalg.inv(count * information(fit_location, fit_scale))
        slope = np.array([1.0, stats.gumbel_r.ppf(part, 0, 1)])
        error = np.sqrt(slope @ covariance @ slope)
        out.write(f"{name},{blocks},{fit_location:.9g},{fit_scale:.9g},{level:.9g},{error:.6g},{' '.join(map(str, maxima))}\n")
