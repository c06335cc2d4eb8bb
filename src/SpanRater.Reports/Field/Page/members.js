/* The members as a table, the card of the chosen one, and the verdict on the vehicle: the same facts in words. */
const Members = (() => {
  "use strict";

  const { html, force, fixed, cut, short, say } = Figures;

  const factorText = (found) => (found.factor === null ? found.why : cut(found.factor, 2) + (found.why === "" ? "" : ` (${found.why})`));

  const peakText = (facts, peak, share) => (peak === null || Rolling.onTruss(peak, share) === null ? "\u2013" : force(facts, Rolling.onTruss(peak, share)));

  function make(body, facts, choose) {
    const rows = facts.members.map((member, m) => {
      const line = html("tr");
      const head = html("th", "", { scope: "row" });
      const button = html("button", member.name, { type: "button", class: "pick" });
      button.addEventListener("click", () => choose(m));
      head.append(button);
      const cells = [0, 1, 2, 3, 4].map((i) => html("td", "", { class: i === 2 || i === 4 ? "factor" : "number" }));
      line.append(head, ...cells);
      return { line, cells };
    });
    body.replaceChildren(...rows.map((r) => r.line));
    return rows;
  }

  function showNow(rows, facts, forces) {
    forces.forEach((value, m) => {
      say(rows[m].cells[0], value === null ? "not available here" : force(facts, value));
    });
  }

  function showPeaks(rows, facts, roll, peaks, rating) {
    const share = roll.vehicle.shares[roll.truss];
    rows.forEach(({ cells }, m) => {
      Rolling.senses.forEach((sense, s) => {
        cells[1 + 2 * s].textContent = peaks[m] === null ? "not available here" : peakText(facts, peaks[m][sense], share);
        cells[2 + 2 * s].textContent = factorText(rating.factors[roll.truss][m][s]);
      });
    });
  }

  const choose = (rows, m) => rows.forEach(({ line }, i) => line.classList.toggle("chosen", i === m));

  const nameOf = (facts, found) => `${facts.members[found.member].name} in ${Rolling.senses[found.sense]}${facts.trusses.length > 1 ? ` (${facts.trusses[found.truss]} truss)` : ""}`;

  /* What the vehicle comes to by the truss members that the page can rate, and what it leaves out. */
  function verdict(facts, vehicle, edited, peaks, rating, level) {
    const of = vehicle.levels[level];
    const name = edited ? `${vehicle.name}, edited` : vehicle.name;
    if (rating.withheldBy !== null) {
      const rod = facts.members[rating.withheldBy.member].name;
      return [`${name}: withheld. ${rod} only pulls and goes slack at ${cut(rating.withheldBy.factor, 2)} of the factored vehicle, with nothing to take over. Keep such a vehicle off.`];
    }
    const lines = [];
    if (vehicle.reason !== null && !(edited && vehicle.withheld)) {
      lines.push(`${name} is ${vehicle.withheld ? "withheld" : "not rated"}: ${vehicle.reason}.`);
    } else if (rating.lowest === null) {
      lines.push(`${name}: no factor of a truss member is available here.`);
    } else {
      const low = rating.lowest.factor < 1 ? " Too heavy for this member as entered." : "";
      lines.push(`${name}, ${of.name} level: lowest factor of the truss members${rating.open ? " that are available here" : ""} ${cut(rating.lowest.factor, 2)}, ${nameOf(facts, rating.lowest)}.${low}`);
    }
    if (rating.open) {
      lines.push("Members marked \u201cnot available here\u201d need what the page does not compute: it does not guess.");
    }
    lines.push(...posting(facts, vehicle, rating, level));
    lines.push(edited ? facts.leavesOut : vehicle.whole);
    return lines.filter((l) => l !== "");
  }

  function posting(facts, vehicle, rating, level) {
    if (vehicle.posting === null) {
      return ["No posting rule covers this class of vehicle."];
    }
    if (level !== vehicle.postLevel) {
      return [`Posting goes by the ${vehicle.levels[vehicle.postLevel].name} level.`];
    }
    const found = Rolling.postingOf(facts, vehicle, rating);
    if (found === null) {
      return ["Posting by the truss members: not available here."];
    }
    const most = rating.lacks ? "at most " : "";
    const text = found.verdict === "notNeeded" ? `none needed${rating.lacks ? " by what is rated" : ""}` : found.verdict === "barred" ? "this type is barred" : `${most}${found.tons} US tons`;
    return [`Posting review by the truss members alone: ${text}. It is no posting: floor, connections and other types may say less.`];
  }

  /* The chosen member: force, dead load, peaks and where they are. */
  function card(facts, roll, peaks, rating, forces, m) {
    const member = facts.members[m];
    const now = forces[m];
    const unit = facts.force.symbol;
    const lines = [
      ["now, live", now === null ? "not available here" : `${force(facts, Math.abs(now))} ${unit}${now === 0 ? "" : now > 0 ? " tension" : " compression"}`],
      ["dead load", `${force(facts, Math.abs(facts.dead[roll.truss][m]))} ${unit}${facts.dead[roll.truss][m] < 0 ? " compression" : " tension"}`],
    ];
    Rolling.senses.forEach((sense, s) => {
      const peak = peaks[m]?.[sense] ?? null;
      const brings = peak === null ? null : Rolling.onTruss(peak, roll.vehicle.shares[roll.truss]);
      const where = brings === null ? (peaks[m] === null ? "not available here" : "none") : `${force(facts, Math.abs(brings))} ${unit}`;
      const found = rating.factors[roll.truss][m][s];
      lines.push([`most ${sense}`, `${where}; ${found.factor === null ? "" : "factor "}${factorText(found)}${found.heldBy === undefined ? "" : `, where ${short(facts.members[found.heldBy].name)} goes slack`}`]);
    });
    return { title: member.name + (member.role === "" ? "" : `, ${member.role}`), lines };
  }

  return { make, showNow, showPeaks, choose, verdict, card, fixed };
})();
