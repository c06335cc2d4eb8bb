/* The influence line of the chosen member under the deck, with the axles on it and what each adds. */
const Line = (() => {
  "use strict";

  const { svg, html, force, length, fixed, short } = Figures;
  const TALLEST = 150;
  const ABOVE = 36;
  const BELOW = 62;

  /* again: called where the axles must be drawn anew. */
  const make = (root, again) => ({ root, brush: Brush.make(root, again) });

  /* One line, drawn anew when another member is chosen. */
  function setMember(drawing, facts, at, m) {
    const line = facts.members[m].line;
    const [high, low] = [Math.max(0, ...line), Math.min(0, ...line)];
    const most = high - low || 1;
    const zero = ABOVE + (high / most) * TALLEST;
    const y = (ordinate) => zero - (ordinate / most) * TALLEST;
    const height = ABOVE + TALLEST + BELOW;
    drawing.root.setAttribute("viewBox", `0 0 ${Elevation.WIDTH} ${height}`);
    const points = facts.stations.map((x, i) => [at.x(x), y(line[i])]);
    const [first, last] = [points[0], points[points.length - 1]];
    drawing.root.replaceChildren();
    drawing.root.append(svg("polygon", { points: [[first[0], zero], ...points, [last[0], zero]].map((p) => p.join(",")).join(" "), class: "area" }));
    drawing.root.append(svg("line", { x1: first[0], y1: zero, x2: last[0], y2: zero, class: "axis" }));
    drawing.root.append(svg("polyline", { points: points.map((p) => p.join(",")).join(" "), class: "curve" }));
    const extremes = new Set([line.indexOf(Math.max(...line)), line.indexOf(Math.min(...line))].filter((i) => Math.abs(line[i]) > 1e-9 * most));
    for (const i of extremes) {
      drawing.root.append(svg("text", { x: points[i][0], y: points[i][1] + (line[i] > 0 ? -10 : 24), class: "ordinate" }, `${line[i] > 0 ? "+" : ""}${fixed(line[i], 3)}`));
    }
    facts.panelPoints.forEach((j, i) => drawing.root.append(svg("text", { x: at.x(facts.stations[i]), y: height - 8, class: "name" }, short(facts.joints[j].name, 6))));
    drawing.y = y;
    drawing.zero = zero;
    drawing.at = at;
    drawing.line = line;
    Brush.measure(drawing.brush);
  }

  function showAxles({ brush, line, at, y, zero }, facts, roll, axles) {
    const size = brush.narrow ? 36 : 16;
    Brush.clear(brush);
    axles.forEach((station, k) => {
      const ordinate = Peaks.ordinate(facts.stations, line, station, roll.approach);
      if (ordinate !== 0) {
        const [x, end] = [at.x(station), y(ordinate)];
        Brush.line(brush, [[x, zero], [x, end]], "link", 4);
        Brush.disc(brush, x, end, 5, "link");
        Brush.text(brush, String(k + 1), x, zero + (ordinate > 0 ? 1 : -1) * size, "link", size, true);
      }
    });
  }

  /* The sum as a table: axle, where, load, ordinate, product; then the share. */
  function tabulate(body, facts, roll, axles, m) {
    const line = facts.members[m].line;
    let sum = 0;
    const rows = axles.map((x, k) => {
      const ordinate = Peaks.ordinate(facts.stations, line, x, roll.approach);
      sum += ordinate * roll.vehicle.loads[k];
      return row(String(k + 1), length(facts, x), force(facts, roll.vehicle.loads[k]), fixed(ordinate, 5), force(facts, ordinate * roll.vehicle.loads[k], 3));
    });
    const share = roll.vehicle.shares[roll.truss];
    rows.push(row("sum, whole vehicle", "", "", "", force(facts, sum, 3)));
    rows.push(row(`times share ${share === null ? "not available here" : fixed(share, 4)}`, "", "", "", share === null ? "" : force(facts, share * sum, 3)));
    body.replaceChildren(...rows);
  }

  function row(...cells) {
    const made = html("tr");
    cells.forEach((cell, i) => made.append(html(i === 0 ? "th" : "td", cell, i === 0 ? { scope: "row" } : { class: "number" })));
    return made;
  }

  return { make, setMember, showAxles, tabulate };
})();
