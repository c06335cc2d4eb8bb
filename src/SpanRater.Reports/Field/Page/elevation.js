/* The truss from the side with the vehicle on it: pull is a full stroke, push a dashed one, and each bears its number. */
const Elevation = (() => {
  "use strict";

  const { svg, short } = Figures;
  const WIDTH = 1000;
  const BESIDE = 70;

  function scaleOf(facts) {
    const xs = [...facts.joints.map((j) => j.x), ...facts.stations];
    const ys = facts.joints.map((j) => j.y);
    const left = Math.min(...xs);
    const scale = Math.min((WIDTH - 2 * BESIDE) / (Math.max(...xs) - left), 420 / Math.max(1e-6, Math.max(...ys) - Math.min(...ys)));
    const inset = (WIDTH - (Math.max(...xs) - left) * scale) / 2;
    const top = Math.max(...ys);
    const deckTop = Math.max(...facts.deck.map((d) => d.y));
    const above = 46 + Math.max(0, 64 - (top - deckTop) * scale);
    return {
      x: (x) => inset + (x - left) * scale,
      y: (y) => above + (top - y) * scale,
      height: above + (top - Math.min(...ys)) * scale + 74,
      scale,
    };
  }

  /* Height of the deck at a station; level beyond its ends. */
  function deckAt(facts, x) {
    const d = facts.deck;
    if (x <= d[0].x) {
      return d[0].y;
    }
    const right = d.findIndex((p) => p.x >= x);
    if (right < 0) {
      return d[d.length - 1].y;
    }
    const [a, b] = [d[right - 1], d[right]];
    return a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
  }

  function drawMembers(root, facts, at, choose) {
    return facts.members.map((member, m) => {
      const [a, b] = [facts.joints[member.from], facts.joints[member.to]];
      const ends = { x1: at.x(a.x), y1: at.y(a.y), x2: at.x(b.x), y2: at.y(b.y) };
      const group = svg("g", { class: "bar" });
      const halo = svg("line", { ...ends, class: "halo" });
      const line = svg("line", { ...ends, class: "stroke" });
      const touch = svg("line", { ...ends, class: "touch" });
      touch.addEventListener("click", () => choose(m));
      group.append(halo, line, touch);
      root.append(group);
      return { group, line, was: { group: {}, line: {}, number: {} } };
    });
  }

  /* Numbers stand beside the middle of their member, above it or to its right, on the paper's colour. */
  function drawNumbers(root, facts, at) {
    return facts.members.map((member) => {
      const [a, b] = [facts.joints[member.from], facts.joints[member.to]];
      const [dx, dy] = [at.x(b.x) - at.x(a.x), at.y(b.y) - at.y(a.y)];
      const size = Math.hypot(dx, dy) || 1;
      const along = Math.abs(dy) > 0.2 * size && Math.abs(dx) > 0.2 * size ? 0.62 : 0.5;
      const text = svg("text", { x: at.x(a.x) + along * dx, y: at.y(a.y) + along * dy - (Math.abs(dy) < 0.2 * size ? 12 : 0), class: "number" });
      root.append(text);
      return text;
    });
  }

  function drawStill(root, facts, at) {
    const deck = facts.deck.map((d) => `${at.x(d.x)},${at.y(d.y) + 10}`).join(" ");
    root.append(svg("polyline", { points: deck, class: "deck" }));
    for (const joint of facts.joints.filter((j) => j.support)) {
      const [x, y] = [at.x(joint.x), at.y(joint.y)];
      root.append(svg("path", { d: `M${x} ${y + 3}l-13 22h26z`, class: "support" }));
    }
  }

  function drawJoints(root, facts, at) {
    for (const joint of facts.joints) {
      root.append(svg("circle", { cx: at.x(joint.x), cy: at.y(joint.y), r: 4, class: "joint" }));
    }
    facts.panelPoints.forEach((j) => {
      const joint = facts.joints[j];
      root.append(svg("text", { x: at.x(joint.x), y: at.y(deckAt(facts, joint.x)) + 44, class: "name" }, short(joint.name, 6)));
    });
  }

  function make(root, facts, choose) {
    const at = scaleOf(facts);
    root.setAttribute("viewBox", `0 0 ${WIDTH} ${Math.ceil(at.height)}`);
    drawStill(root, facts, at);
    const bars = drawMembers(root, facts, at, choose);
    drawJoints(root, facts, at);
    const vehicle = svg("g", { class: "vehicle" });
    root.append(vehicle);
    const numbers = drawNumbers(root, facts, at);
    return { facts, at, bars, numbers, vehicle };
  }

  /* The wheels and the frame above them, made anew when the vehicle changes. */
  function setVehicle(drawing, loads) {
    drawing.vehicle.replaceChildren();
    drawing.frame = svg("path", { class: "frame" });
    drawing.vehicle.append(drawing.frame);
    drawing.wheels = loads.map((load) => {
      const wheel = svg("circle", { r: 9, class: "wheel" });
      const weight = svg("text", { class: "weight" }, Figures.force(drawing.facts, load, 1));
      drawing.vehicle.append(wheel, weight);
      return { wheel, weight };
    });
  }

  function showVehicle(drawing, axles, direction) {
    const { at, facts } = drawing;
    const points = axles.map((x) => [at.x(x), at.y(deckAt(facts, x)) - 4]);
    points.forEach(([x, y], k) => {
      const { wheel, weight } = drawing.wheels[k];
      wheel.setAttribute("cx", x);
      wheel.setAttribute("cy", y);
      weight.setAttribute("x", x);
      weight.setAttribute("y", y - 34);
    });
    const front = direction === "right" ? 1 : -1;
    const [first, last] = [points[0], points[points.length - 1]];
    drawing.frame.setAttribute("d", `M${last[0] - front * 14} ${last[1] - 17}L${first[0] + front * 14} ${first[1] - 17}m${-front * 9} -7l${front * 12} 7l${-front * 12} 7`);
  }

  /* What was last written, so that only what changes is written again: a browser asked for what it holds is slow. */
  function put(shown, element, attribute, value) {
    if (shown[attribute] !== value) {
      shown[attribute] = value;
      if (attribute === "text") {
        element.textContent = value;
      } else {
        element.setAttribute(attribute, value);
      }
    }
  }

  /* forces: newtons, tension positive, or null where they are not available; most: the largest anywhere, for the width of a stroke. */
  function showForces(drawing, forces, most, chosen, withNumbers) {
    const unit = drawing.facts.force.newtons;
    forces.forEach((force, m) => {
      const { group, line, was } = drawing.bars[m];
      const size = force === null ? 0 : Math.abs(force) / most;
      const kind = force === null ? "unknown" : size < 5e-4 ? "none" : force > 0 ? "pull" : "push";
      const look = `${kind}${m === chosen ? " chosen" : ""}`;
      put(was.group, group, "class", `bar ${look}`);
      put(was.line, line, "stroke-width", kind === "none" || kind === "unknown" ? "2" : (Math.round(5 + 10 * size) / 2).toString());
      if (withNumbers) {
        put(was.number, drawing.numbers[m], "class", `number ${look}`);
        put(was.number, drawing.numbers[m], "text", kind === "unknown" ? "?" : kind === "none" ? "" : `${(Math.abs(force) / unit).toFixed(1)} ${force > 0 ? "T" : "C"}`);
      }
    });
  }

  return { make, setVehicle, showVehicle, showForces, WIDTH };
})();
