# Second opinion on test/aqueous/systems.ts: the same systems by a general root finder, every set of solids tried.
# Made with SciPy 1.17 (any will do):
#   npx tsx test/aqueous/print-systems.ts 1600 | python3 test/aqueous/reference.py > test/aqueous/reference.json
# For each set of standing solids the balances, as logarithms of what is on either side, are put to scipy.optimize.root
# from several starts; a root counts if no other solid is over-saturated. The problem is convex, so it is the only one.
import itertools, json, sys, time
import numpy as np
from scipy.optimize import root

SLOPE = 0.5092 * np.log(10)

def term(i):
    i = min(i, 0.5)
    return np.sqrt(i) / (1 + np.sqrt(i)) - 0.3 * i

def solve(system, seconds):
    n = len(system["components"])
    rows = [([(j, 1)], 0.0, z) for j, z in enumerate(system["components"])]
    rows += [(r["nu"], r["lnK"], r["charge"]) for r in system["species"]]
    nu = np.zeros((len(rows), n)); lnk = np.array([r[1] for r in rows]); z2 = np.array([r[2] ** 2.0 for r in rows])
    for i, r in enumerate(rows):
        for j, v in r[0]: nu[i, j] += v
    best = {}
    for r in system["conditions"]:
        v = np.zeros(n)
        for j, k in r["nu"]: v[j] += k
        key = tuple(v)
        if key not in best or best[key][1] > r["lnK"]: best[key] = (v, r["lnK"])
    solids = list(best.values())
    total = np.array(system["totals"])
    rng = np.random.default_rng(1)
    end = time.time() + seconds
    def attempt(chosen, start):
        s = np.array([solids[k][0] for k in chosen]).reshape(len(chosen), n); ks = np.array([solids[k][1] for k in chosen])
        def f(y):
            x, u, i = y[:n], y[n:-1], np.exp(np.clip(y[-1], -60, 5))
            c = np.exp(np.clip(lnk + nu @ x + SLOPE * term(i) * z2, -600, 200)); a = np.exp(np.clip(u, -600, 200))
            up = np.maximum(nu, 0).T @ c + np.maximum(s, 0).T @ a + np.maximum(-total, 0)
            down = np.maximum(-nu, 0).T @ c + np.maximum(-s, 0).T @ a + np.maximum(total, 0)
            return np.concatenate([np.log(up) - np.log(down), s @ x - ks, [np.log(z2 @ c / 2) - y[-1]]])
        for method in ("hybr", "lm"):
            began = time.perf_counter()
            out = root(f, start, method=method, tol=1e-15)
            if np.max(np.abs(f(out.x))) < 1e-11:
                single.append(time.perf_counter() - began)
                return out.x
        return None
    for size in range(0, min(n, len(solids)) + 1):
        for chosen in itertools.combinations(range(len(solids)), size):
            if size and np.linalg.matrix_rank(np.array([solids[k][0] for k in chosen])) < size: continue
            for _ in range(4):
                if time.time() > end: return None
                x0 = np.concatenate([[-rng.uniform(2, 30)], np.log(total[1:]) - rng.uniform(0, 20, n - 1)])
                y = attempt(chosen, np.concatenate([x0, rng.uniform(-12, -2, size), [-2]]))
                if y is None: continue
                calls.append(single[-1])
                if all(v @ y[:n] - k < 1e-9 for i, (v, k) in enumerate(solids) if i not in chosen):
                    return {"lnH": y[0], "I": float(np.exp(y[-1])), "last": y[n - 1], "solids": sorted(round(float(np.exp(u)), 15) for u in y[n:-1])}
                break
    return None

# seconds of each call that found a root, and of those, per system, the last: the one with the right set of solids
single, calls, right, whole = [], [], [], []
found = []
for number, system in enumerate(json.load(sys.stdin)):
    began = time.perf_counter()
    try: answer = solve(system, 2.5)
    except Exception: answer = None
    if answer: right.append(calls[-1]); whole.append(time.perf_counter() - began)
    if answer: found.append([number, answer["lnH"], answer["last"], answer["I"]])
    if len(found) == 1000: break
print(f"median {1e6 * float(np.median(right)):.0f} µs with the right solids given and a start that converges, {1e6 * float(np.median(whole)):.0f} µs as the same problem (solids found)", file=sys.stderr)
print("[\n" + ",\n".join(json.dumps(row) for row in found) + "\n]")
