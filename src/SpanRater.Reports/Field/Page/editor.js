/* The axles of the vehicle as a small table to write in; every fault is told at its field, and nothing changes before all are mended. */
const Editor = (() => {
  "use strict";

  const { html } = Figures;
  const MOST_AXLES = 40;
  const MOST_VARYING = 3;

  const plain = (value) => String(Number(value.toPrecision(9)));

  function show(form, facts, vehicle) {
    form.rows.replaceChildren(
      ...vehicle.loads.map((load, k) => {
        const line = html("tr");
        line.append(html("th", `axle ${k + 1}`, { scope: "row" }));
        line.append(cell(field(`Weight of axle ${k + 1}, ${facts.force.symbol}`, plain(load / facts.force.newtons), "load")));
        const gap = k === 0 ? null : vehicle.gaps[k - 1].map((g) => plain(g / facts.length.metres));
        line.append(gap === null ? html("td", "front") : cell(field(`Distance behind axle ${k}, ${facts.length.symbol}`, gap[0] === gap[1] ? gap[0] : `${gap[0]} to ${gap[1]}`, "gap")));
        return line;
      }));
  }

  function cell(content) {
    const made = html("td");
    made.append(content);
    return made;
  }

  function field(label, value, kind) {
    const input = html("input", "", { type: "text", inputmode: "decimal", autocomplete: "off", "aria-label": label, "data-kind": kind });
    input.value = value;
    return input;
  }

  const number = (text) => (/^\s*\d+(\.\d+)?\s*$/.test(text) ? Number(text) : NaN);

  /* { loads, gaps } in newtons and metres, or null with every faulty field marked and told. */
  function read(form, facts) {
    const faults = [];
    const mark = (input, fault) => {
      input.setAttribute("aria-invalid", fault === "" ? "false" : "true");
      if (fault !== "") {
        faults.push(`${input.getAttribute("aria-label")}: ${fault}`);
      }
    };
    const loads = [...form.rows.querySelectorAll("[data-kind=load]")].map((input) => {
      const load = number(input.value);
      mark(input, load > 0 && load < 1e4 ? "" : "write a weight above 0, such as 17 or 17.5.");
      return load * facts.force.newtons;
    });
    const gaps = [...form.rows.querySelectorAll("[data-kind=gap]")].map((input) => {
      const [least, most, ...rest] = input.value.split(/ to |\u2013|-/).map(number);
      const ends = [least, most ?? least];
      mark(input, rest.length === 0 && ends[0] > 0 && ends[1] >= ends[0] && ends[1] < 1e4 ? "" : "write a distance above 0, such as 14, or a range, such as 14 to 30.");
      return ends.map((g) => g * facts.length.metres);
    });
    if (faults.length === 0 && gaps.filter((g) => g[1] > g[0]).length > MOST_VARYING) {
      faults.push(`At most ${MOST_VARYING} distances may vary.`);
    }
    form.faults.textContent = faults.join(" ");
    return faults.length === 0 ? { loads, gaps } : null;
  }

  /* One axle more behind, like the last; or one less. */
  function added(vehicle) {
    const next = Rolling.copyOf(vehicle);
    if (next.loads.length < MOST_AXLES) {
      next.gaps.push([...(next.gaps[next.gaps.length - 1] ?? [4 * 0.3048, 4 * 0.3048])]);
      next.loads.push(next.loads[next.loads.length - 1]);
    }
    return next;
  }

  function removed(vehicle) {
    const next = Rolling.copyOf(vehicle);
    if (next.loads.length > 1) {
      next.loads.pop();
      next.gaps.pop();
    }
    return next;
  }

  return { show, read, added, removed };
})();
