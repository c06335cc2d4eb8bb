/* The truss from the side with the vehicle on it: pull is a full stroke, push a dashed one, and each bears its number. */
const Elevation = (() => {
  "use strict";

  const { svg, force, short } = Figures;
  const WIDTH = 1000;
  const BESIDE = 70;
  const SIZE = 17;
  const CHOSEN = 20;
  const LOAD = 15;

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

  /* The truss as it stands: thin lines, and broad ones that nobody sees, for the finger. */
  function drawMembers(root, facts, at, choose) {
    return facts.members.map((member, m) => {
      const [a, b] = [facts.joints[member.from], facts.joints[member.to]];
      const ends = { x1: at.x(a.x), y1: at.y(a.y), x2: at.x(b.x), y2: at.y(b.y) };
      const touch = svg("line", { ...ends, class: "touch" });
      touch.addEventListener("click", () => choose(m));
      root.append(svg("line", { ...ends, class: "member" }), touch);
      return { ends: [[ends.x1, ends.y1], [ends.x2, ends.y2]], number: besideMiddle(ends) };
    });
  }

  /* Numbers stand beside the middle of their member, or above it. */
  function besideMiddle({ x1, y1, x2, y2 }) {
    const [dx, dy] = [x2 - x1, y2 - y1];
    const size = Math.hypot(dx, dy) || 1;
    const along = Math.abs(dy) > 0.2 * size && Math.abs(dx) > 0.2 * size ? 0.62 : 0.5;
    return [x1 + along * dx, y1 + along * dy - (Math.abs(dy) < 0.2 * size ? 14 : 0)];
  }

  function drawStill(root, facts, at) {
    const deck = facts.deck.map((d) => `${at.x(d.x)},${at.y(d.y) + 10}`).join(" ");
    root.append(svg("polyline", { points: deck, class: "deck" }));
    for (const joint of facts.joints.filter((j) => j.support)) {
      const [x, y] = [at.x(joint.x), at.y(joint.y)];
      root.append(svg("path", { d: `M${x} ${y + 3}l-13 22h26z`, class: "support" }));
    }
  }

  function drawNames(root, facts, at) {
    facts.panelPoints.forEach((j) => {
      const joint = facts.joints[j];
      root.append(svg("text", { x: at.x(joint.x), y: at.y(deckAt(facts, joint.x)) + 44, class: "name" }, short(joint.name, 6)));
    });
  }

  /* again: called where all must be drawn anew. */
  function make(root, facts, choose, again) {
    const at = scaleOf(facts);
    root.setAttribute("viewBox", `0 0 ${WIDTH} ${Math.ceil(at.height)}`);
    drawStill(root, facts, at);
    const bars = drawMembers(root, facts, at, choose);
    drawNames(root, facts, at);
    /* The numbers lie over what moves with every frame. */
    const numbers = Brush.make(root, again);
    return { facts, at, bars, joints: facts.joints.map((j) => [at.x(j.x), at.y(j.y)]), brush: Brush.make(root, again), numbers };
  }

  /* What a force looks like: pull a full stroke, push a dashed one, and the greater the broader. Null is a force that is not available. */
  function lookOf(force, most, unit) {
    const size = force === null ? 0 : Math.abs(force) / most;
    if (force === null) {
      return { colour: "soft", dash: [2, 6], width: 2, text: "?" };
    }
    if (size < 5e-4) {
      return { colour: "soft", dash: [], width: 2, text: "" };
    }
    const text = (Math.abs(force) / unit).toFixed(1);
    const width = 2.5 + 5 * size;
    return force > 0 ? { colour: "tension", dash: [], width, text: `${text} T` } : { colour: "compression", dash: [10, 5], width, text: `${text} C` };
  }

  /* forces: newtons, tension positive, or null; most: the largest anywhere, for the width of a stroke. */
  const looksOf = ({ facts }, forces, most) => forces.map((force) => lookOf(force, most, facts.force.newtons));

  /* All that moves with every frame: strokes, vehicle, and the number of the chosen member. */
  function show(drawing, looks, chosen, loads, axles, direction) {
    const { brush, bars, joints } = drawing;
    const pixel = 1 / brush.ratio;
    Brush.clear(brush);
    Brush.line(brush, bars[chosen].ends, "line", 24, [], "round");
    looks.forEach(({ colour, dash, width }, m) => Brush.line(brush, bars[m].ends, colour, width * pixel, dash.map((d) => d * pixel)));
    joints.forEach(([x, y]) => Brush.disc(brush, x, y, 4, "paper", "text", 1.5));
    showVehicle(drawing, loads, axles, direction);
    write(brush, bars[chosen], looks[chosen], brush.narrow ? 40 : CHOSEN, true);
  }

  /* Whose numbers are written: those that lie over no greater one. The same as long as the vehicle is, so that none flickers; the table holds all. */
  function setNumbered(drawing, sizes) {
    const plate = (m) => Brush.plateOf(`${(sizes[m] / drawing.facts.force.newtons).toFixed(1)} T`, ...drawing.bars[m].number, SIZE);
    drawing.numbered = [];
    for (const m of [...sizes.keys()].sort((a, b) => sizes[b] - sizes[a])) {
      if (!drawing.numbered.some((n) => Brush.overlap(plate(m), plate(n)))) {
        drawing.numbered.push(m);
      }
    }
  }

  /* The numbers of the others, but where the vehicle stands. */
  function showNumbers({ numbers, numbered, bars, at, facts }, looks, chosen, axles) {
    Brush.clear(numbers);
    const wheels = axles.map((x) => [at.x(x) - 28, at.y(deckAt(facts, x)) - 52, 56, 58]);
    const [left, right] = [Math.min(...wheels.map((w) => w[0])), Math.max(...wheels.map((w) => w[0] + w[2]))];
    const top = Math.min(...wheels.map((w) => w[1] + 22));
    const frame = [left, top, right - left, Math.max(...wheels.map((w) => w[1] + w[3])) - top];
    const taken = [...wheels, frame, Brush.plateOf(looks[chosen].text, ...bars[chosen].number, CHOSEN)];
    for (const m of numbers.narrow ? [] : numbered) {
      if (m !== chosen && !taken.some((box) => Brush.overlap(box, Brush.plateOf(looks[m].text, ...bars[m].number, SIZE)))) {
        write(numbers, bars[m], looks[m], SIZE);
      }
    }
  }

  function write(brush, bar, { colour, text }, size, bold = false) {
    if (text !== "") {
      Brush.text(brush, text, ...bar.number, colour === "soft" ? "text" : colour, size, bold);
    }
  }

  /* The wheels, their loads and the frame above them, with an arrow at its front. */
  function showVehicle({ at, facts, brush }, loads, axles, direction) {
    const points = axles.map((x) => [at.x(x), at.y(deckAt(facts, x)) - 4]);
    const front = direction === "right" ? 1 : -1;
    const [first, last] = [points[0], points[points.length - 1]];
    const tip = [first[0] + front * 14, first[1] - 17];
    Brush.line(brush, [[last[0] - front * 14, last[1] - 17], tip], "text", 5);
    Brush.line(brush, [[tip[0] - front * 9, tip[1] - 7], [tip[0] + front * 3, tip[1]], [tip[0] - front * 9, tip[1] + 7]], "text", 5);
    points.forEach(([x, y], k) => {
      Brush.disc(brush, x, y, brush.narrow ? 15 : 9, "text", "paper", 3);
    });
    if (!brush.narrow) {
      loadsOver(points, loads.map((load) => force(facts, load, 1))).forEach(([words, x, y]) => Brush.text(brush, words, x, y, "text", LOAD));
    }
  }

  /* Where the loads are written: above their wheel, higher where that would lie over the one before. */
  function loadsOver(points, words) {
    const placed = [];
    points.forEach(([x, y], k) => {
      let at = y - 38;
      while (placed.some((other) => Brush.overlap(Brush.plateOf(...other, LOAD), Brush.plateOf(words[k], x, at, LOAD)))) {
        at -= LOAD + 3;
      }
      placed.push([words[k], x, at]);
    });
    return placed;
  }

  return { make, looksOf, setNumbered, show, showNumbers, WIDTH };
})();
