/*
 * Exact peaks of a train of axles on lines that are straight between given stations: the same search as the engine's, which
 * checks it by the case files. Between positions at which an axle stands on a station the response is straight, so that the
 * peaks are among those; a gap that varies is at a limit, or has an axle on a station on either side of it. Knows no page.
 *
 * Units: whatever loads and lengths the caller has, all alike. A train is { loads: [..], gaps: [[least, most], ..],
 * leaveOut: whether axles that relieve count nothing }, from the front axle back; gaps has one entry less than loads.
 */
const Peaks = (() => {
  "use strict";

  /* An axle nearer to a station than this part of the deck stands on it. */
  const ON_STATION = 1e-9;
  /* Effects below this part of the train's weight are zero; closer than the second, equal. */
  const ZERO = 1e-9;
  const EQUAL = 1e-12;
  /* How a position is approached: as it is, from its left, from its right. It counts at the ends of the deck only. */
  const AT = 0;
  const JUST_LEFT = 1;
  const JUST_RIGHT = 2;

  const toleranceOf = (stations) => ON_STATION * (stations[stations.length - 1] - stations[0]);

  /* Segment under x, place within it, and whether x is an end of the deck (-1, 1), within it (0) or off it (null). */
  function placeOf(x, stations, tolerance) {
    const last = stations.length - 1;
    if (x < stations[0] - tolerance || x > stations[last] + tolerance) {
      return { segment: 0, part: 0, edge: null };
    }
    let right = 1;
    while (right < last && x > stations[right] + tolerance) {
      right++;
    }
    const from = stations[right - 1];
    let part = Math.min(1, Math.max(0, (x - from) / (stations[right] - from)));
    if (Math.abs(x - stations[right]) <= tolerance) {
      part = 1;
    } else if (Math.abs(x - from) <= tolerance) {
      part = 0;
    }
    const edge = right === 1 && part === 0 ? -1 : right === last && part === 1 ? 1 : 0;
    return { segment: right - 1, part, edge };
  }

  function ordinateAt(place, line, approach) {
    if (place.edge === null || (place.edge === -1 && approach === JUST_LEFT) || (place.edge === 1 && approach === JUST_RIGHT)) {
      return 0;
    }
    return place.part === 1 ? line[place.segment + 1] : (1 - place.part) * line[place.segment] + place.part * line[place.segment + 1];
  }

  /* Ordinate of a line at a place on the deck; 0 off it. */
  const ordinate = (stations, line, x, approach = AT) => ordinateAt(placeOf(x, stations, toleranceOf(stations)), line, approach);

  /* x of every axle with the front axle at x, driving right or left. */
  function axlesAt(front, direction, gaps) {
    const back = direction === "right" ? -1 : 1;
    const axles = [front];
    for (const gap of gaps) {
      axles.push(axles[axles.length - 1] + back * gap);
    }
    return axles;
  }

  /* Effect of axles at places; with a sign given, those that relieve it may be left out. */
  function effectOf(stations, line, loads, axles, approach = AT, leaveOutAgainst = 0) {
    const tolerance = toleranceOf(stations);
    return loads.reduce((sum, load, k) => {
      const effect = load * ordinateAt(placeOf(axles[k], stations, tolerance), line, approach);
      return sum + (leaveOutAgainst * effect < 0 ? 0 : effect);
    }, 0);
  }

  /* Axles that keep their distances: every position with one of them on a station, and where each then is. */
  function groupOf(stations, loads, offsets, tolerance) {
    const all = stations.flatMap((s) => offsets.map((o) => s - o)).sort((a, b) => a - b);
    const positions = [];
    for (const x of all) {
      if (positions.length === 0 || x - positions[positions.length - 1] > tolerance) {
        positions.push(x);
      }
    }
    const places = positions.map((p) => offsets.map((o) => placeOf(p + o, stations, tolerance)));
    return { loads, offsets, positions, places, atEdge: places.map((p) => p.some((q) => q.edge === -1 || q.edge === 1)) };
  }

  /* Both directions, and every setting of the gaps that vary: at their least, at their most, or free, which parts the train into groups. */
  function planOf(stations, train) {
    const tolerance = toleranceOf(stations);
    const varying = train.gaps.map((g, i) => (g[1] > g[0] ? i : -1)).filter((i) => i >= 0);
    const arrangements = [];
    for (const direction of ["right", "left"]) {
      for (let code = 0; code < 3 ** varying.length; code++) {
        const setting = new Map(varying.map((gap, i) => [gap, Math.floor(code / 3 ** i) % 3]));
        arrangements.push(arrangementOf(stations, train, direction, setting, tolerance));
      }
    }
    return { stations, train, tolerance, arrangements, weight: train.loads.reduce((a, b) => a + b, 0) };
  }

  function arrangementOf(stations, train, direction, setting, tolerance) {
    const back = direction === "right" ? -1 : 1;
    const groups = [];
    const free = [];
    let loads = [train.loads[0]];
    let offsets = [0];
    const gaps = train.gaps.map((g, i) => (setting.get(i) === 1 ? g[1] : g[0]));
    gaps.forEach((gap, i) => {
      if (setting.get(i) === 2) {
        groups.push(groupOf(stations, loads, offsets, tolerance));
        free.push(i);
        [loads, offsets] = [[], []];
      }
      offsets.push(offsets.length === 0 ? 0 : offsets[offsets.length - 1] + back * gap);
      loads.push(train.loads[i + 1]);
    });
    groups.push(groupOf(stations, loads, offsets, tolerance));
    return { direction, back, groups, free, gaps, limits: free.map((i) => train.gaps[i]) };
  }

  const nudge = (approach) => (approach === JUST_LEFT ? -1 : approach === JUST_RIGHT ? 1 : 0);

  function gapBetween(arrangement, g, position, behind) {
    const ahead = arrangement.groups[g];
    const last = ahead.positions[position] + ahead.offsets[ahead.offsets.length - 1];
    return -arrangement.back * (last - arrangement.groups[g + 1].positions[behind]);
  }

  /* A free gap keeps within its limits, and at a limit the groups may not be nudged beyond it. */
  function mayFollow(arrangement, g, position, approach, behind, approachBehind, tolerance) {
    const [least, most] = arrangement.limits[g];
    const gap = gapBetween(arrangement, g, position, behind);
    if (gap < least - tolerance || gap > most + tolerance) {
      return false;
    }
    const opens = -arrangement.back * (nudge(approach) - nudge(approachBehind));
    return !(opens < 0 && gap <= least + tolerance) && !(opens > 0 && gap >= most - tolerance);
  }

  /* From the last group forward: the best that a group in each position gives with all behind it. */
  function verticesOf(arrangement, line, sign, leaveOut, tolerance) {
    let behind = null;
    for (let g = arrangement.groups.length - 1; g >= 0; g--) {
      const group = arrangement.groups[g];
      const here = [];
      group.positions.forEach((_, p) => {
        for (const approach of group.atEdge[p] ? [AT, JUST_LEFT, JUST_RIGHT] : [AT]) {
          let value = 0;
          group.loads.forEach((load, k) => {
            const effect = sign * load * ordinateAt(group.places[p][k], line, approach);
            value += leaveOut && effect < 0 ? 0 : effect;
          });
          const next = behind === null ? null : bestBehind(arrangement, g, p, approach, behind, tolerance);
          if (behind === null || next !== null) {
            here.push({ position: p, approach, value: value + (next === null ? 0 : next.value), next });
          }
        }
      });
      behind = here;
    }
    return behind;
  }

  function bestBehind(arrangement, g, position, approach, behind, tolerance) {
    let best = null;
    for (const vertex of behind) {
      if ((best === null || vertex.value > best.value) && mayFollow(arrangement, g, position, approach, vertex.position, vertex.approach, tolerance)) {
        best = vertex;
      }
    }
    return best;
  }

  function describe(plan, arrangement, vertex, sign) {
    const gaps = [...arrangement.gaps];
    let approach = AT;
    let g = 0;
    for (let v = vertex; v !== null; v = v.next, g++) {
      approach = approach === AT ? v.approach : approach;
      if (v.next !== null) {
        gaps[arrangement.free[g]] = gapBetween(arrangement, g, v.position, v.next.position);
      }
    }
    return { force: sign * vertex.value, station: arrangement.groups[0].positions[vertex.position], direction: arrangement.direction, gaps, approach };
  }

  /* The largest effect in a sense (+1 tension, -1 compression): { force, station of the front axle, direction, gaps, approach }, or null. */
  function peak(plan, line, sign) {
    if (!line.some((y) => sign * y > 0)) {
      return null;
    }
    let best = null;
    for (const arrangement of plan.arrangements) {
      for (const vertex of verticesOf(arrangement, line, sign, plan.train.leaveOut, plan.tolerance)) {
        if (vertex.value > ZERO * plan.weight && (best === null || vertex.value > best.vertex.value + EQUAL * plan.weight)) {
          best = { arrangement, vertex };
        }
      }
    }
    return best === null ? null : describe(plan, best.arrangement, best.vertex, sign);
  }

  /* The largest tension and compression of one line. */
  const of = (plan, line) => ({ tension: peak(plan, line, 1), compression: peak(plan, line, -1) });

  /* Positions of the front axle, driving one way with these gaps, that have an axle on a station: where forces turn. */
  function turns(stations, gaps, direction) {
    const offsets = axlesAt(0, direction, gaps);
    return groupOf(stations, offsets.map(() => 0), offsets, toleranceOf(stations)).positions;
  }

  return { plan: planOf, of, ordinate, axlesAt, effectOf, turns };
})();
