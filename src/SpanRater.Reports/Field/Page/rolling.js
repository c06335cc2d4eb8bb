/*
 * What the vehicle on the deck brings: forces where it stands, peaks and factors, from the facts that the engine wrote into the page.
 * Where the facts do not reach, null stands for "not available here". Touches nothing of the page.
 */
const Rolling = (() => {
  "use strict";

  const TENSION = 0;
  const COMPRESSION = 1;
  const senses = ["tension", "compression"];

  /* A vehicle as it is edited: everything of the one it began as, with axles of its own. */
  const copyOf = (vehicle) => ({ ...vehicle, loads: [...vehicle.loads], gaps: vehicle.gaps.map((g) => [...g]) });

  const sameAxles = (a, b) => JSON.stringify([a.loads, a.gaps]) === JSON.stringify([b.loads, b.gaps]);

  const weightOf = (vehicle) => vehicle.loads.reduce((a, b) => a + b, 0);

  /* Members that only pull, with nothing to take over, which the vehicle standing so would slacken: beyond that no force is known. */
  function slackAt(facts, roll) {
    const share = roll.vehicle.shares[roll.truss];
    return facts.members.findIndex((member, m) => {
      if (!member.pulls || member.rods || share === null) {
        return false;
      }
      const total = facts.dead[roll.truss][m] + share * effectAt(facts, roll, member.line);
      return total < -1e-9 * weightOf(roll.vehicle);
    });
  }

  const axlesOf = (roll) => Peaks.axlesAt(roll.front, roll.direction, roll.gaps);

  const effectAt = (facts, roll, line) => Peaks.effectOf(facts.stations, line, roll.vehicle.loads, axlesOf(roll), roll.approach);

  /* Live force of every member of the truss, share and presence in it, without impact; null where it is not available here. */
  function forcesAt(facts, roll) {
    const share = roll.vehicle.shares[roll.truss];
    const slack = slackAt(facts, roll);
    return { slack, forces: facts.members.map((member) => (member.rods || share === null || slack >= 0 ? null : share * effectAt(facts, roll, member.line))) };
  }

  /* Peaks of every member, whole vehicle on one truss; a member whose line depends on rods has none here. */
  function peaksOf(facts, vehicle) {
    const plan = Peaks.plan(facts.stations, vehicle);
    return facts.members.map((member) => (member.rods ? null : Peaks.of(plan, member.line)));
  }

  /* The force of a peak on one truss; those that the engine told have the share in them already. */
  const onTruss = (peak, share) => (peak.told ? peak.force : share === null ? null : share * peak.force);

  /* Peaks of a vehicle as it is, where rods decide, as the engine told them. */
  function withTold(facts, vehicle, peaks, truss) {
    return peaks.map((own, m) => {
      const [tension, compression] = vehicle.told[truss][m].map((p) => (p === null ? null : { ...p, told: true }));
      return own === null && (tension !== null || compression !== null) ? { tension, compression } : own;
    });
  }

  /* Whether the vehicle stands where a peak was found. */
  const standsAt = (roll, peak) =>
    peak !== null && peak.direction === roll.direction && peak.approach === roll.approach && Math.abs(peak.station - roll.front) < 1e-6 && peak.gaps.every((g, i) => Math.abs(g - roll.gaps[i]) < 1e-6);

  /* The rods that only pull, with nothing to take over: at what part of the factored vehicle the first comes to zero on a truss. */
  function firstSlack(facts, vehicle, peaks, truss, level) {
    let first = null;
    facts.members.forEach((member, m) => {
      if (!member.pulls || member.rods || peaks[m].compression === null) {
        return;
      }
      const of = vehicle.levels[level];
      const pull = facts.rooms[of.rooms][truss][m][COMPRESSION];
      const at = Rating.factorOf(pull, of.factor, vehicle.shares[truss] * peaks[m].compression.force, facts.impacts[vehicle.impacts][m][COMPRESSION]);
      if (at !== null && (first === null || at < first.factor)) {
        first = { factor: at, member: m };
      }
    });
    return first;
  }

  /* One factor: { factor, why }. What is not rated, not loaded or not available says so in words. */
  function factorOf(facts, vehicle, peaks, truss, level, m, sense, cap) {
    const of = vehicle.levels[level];
    if (sense === COMPRESSION && facts.members[m].pulls) {
      return { factor: null, why: "only pulls" };
    }
    const room = facts.rooms[of.rooms][truss][m][sense];
    if (room !== null && room <= 0) {
      return { factor: 0, why: "dead load exceeds" };
    }
    if (vehicle.reason !== null && !vehicle.withheld) {
      return { factor: null, why: "not rated" };
    }
    if (facts.slackens || peaks[m] === null) {
      return { factor: null, why: "not available here" };
    }
    const peak = peaks[m][senses[sense]];
    if (peak === null) {
      return { factor: null, why: "not loaded" };
    }
    if (room === null || of.factor === null) {
      return { factor: null, why: "not rated", lacks: true };
    }
    const share = vehicle.shares[truss];
    const factor = share === null ? null : Rating.factorOf(room, of.factor, share * peak.force, facts.impacts[vehicle.impacts][m][sense]);
    return factor === null ? { factor, why: "not available here" } : cap !== null && cap.factor < factor ? { factor: cap.factor, why: "", heldBy: cap.member } : { factor, why: "" };
  }

  /* The rod that withholds every rating of the vehicle: slack, at some level and on some truss, before the factored vehicle is on whole. */
  function withholds(facts, vehicle, peaks) {
    const all = facts.slackens ? [] : vehicle.levels.flatMap((of, level) => (of.factor === null ? [] : facts.trusses.map((_, truss) => firstSlack(facts, vehicle, peaks, truss, level))));
    return all.filter((s) => s !== null && s.factor < 1).sort((a, b) => a.factor - b.factor)[0] ?? null;
  }

  /* Every factor of a level: factors[truss][member][sense], the lowest, what is open, what lacks a capacity, and the rod that withholds all. */
  function ratingOf(facts, vehicle, peaks, level) {
    let lowest = null;
    let open = false;
    let lacks = false;
    const withheldBy = withholds(facts, vehicle, peaks);
    const factors = facts.trusses.map((_, truss) => {
      const cap = facts.slackens ? null : firstSlack(facts, vehicle, peaks, truss, level);
      return facts.members.map((_, m) =>
        senses.map((_, sense) => {
          const found = factorOf(facts, vehicle, peaks, truss, level, m, sense, cap);
          if (withheldBy !== null && found.factor !== null && found.factor > 0) {
            return { factor: null, why: "withheld" };
          }
          open = open || found.why === "not available here";
          lacks = lacks || found.lacks === true;
          if (found.factor !== null && (lowest === null || found.factor < lowest.factor - 1e-9)) {
            lowest = { factor: found.factor, truss, member: m, sense };
          }
          return found;
        }));
    });
    return { factors, lowest, open, lacks, withheldBy };
  }

  /* The engine's own factors, of a vehicle as it is: whatever they needed. */
  function tableOf(facts, vehicle, level) {
    let lowest = null;
    const factors = facts.trusses.map((_, truss) =>
      facts.members.map((_, m) =>
        senses.map((_, sense) => {
          const cell = vehicle.levels[level].table[truss][m][sense];
          if (typeof cell === "string") {
            return { factor: null, why: cell };
          }
          if (lowest === null || cell < lowest.factor - 1e-9) {
            lowest = { factor: cell, truss, member: m, sense };
          }
          return { factor: cell, why: "" };
        })));
    return { factors, lowest, open: false, lacks: factors.flat(2).some((f) => f.why === "not rated"), withheldBy: null };
  }

  /* Posting by the truss members alone; null where the class is not posted, nothing is rated, or a factor is not available. */
  function postingOf(facts, vehicle, rating) {
    return vehicle.posting === null || rating.lowest === null || rating.open || rating.withheldBy !== null ? null : Rating.postingOf(weightOf(vehicle), rating.lowest.factor, vehicle.posting);
  }

  return { TENSION, COMPRESSION, senses, copyOf, sameAxles, weightOf, axlesOf, effectAt, forcesAt, peaksOf, withTold, onTruss, standsAt, ratingOf, tableOf, postingOf };
})();
