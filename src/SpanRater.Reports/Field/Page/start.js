/* Joins controls and drawings: one state, one place where it changes, one drawing a frame. */
(() => {
  "use strict";

  const $ = (id) => document.getElementById(id);
  const facts = JSON.parse($("living-facts").textContent);
  const { html, force, length, short } = Figures;

  const state = { base: 0, vehicle: null, direction: "right", front: 0, gaps: [], approach: 0, truss: 0, level: 0, member: 0 };
  const deck = [facts.stations[0], facts.stations[facts.stations.length - 1]];
  let computed = [];
  let peaks = [];
  let rating = null;
  let most = 1;
  let waiting = false;
  let begun = false;
  let told = 0;
  let resting = 0;
  const TOLD_EVERY = 100;

  const elevation = Elevation.make($("living-elevation"), facts, chooseMember, draw);
  const line = Line.make($("living-line"), draw);
  const rows = Members.make($("living-members"), facts, chooseMember);
  const form = { rows: $("living-axles"), faults: $("living-faults") };

  const roll = () => state;
  const lengthOf = () => state.gaps.reduce((a, b) => a + b, 0);
  const forward = () => (state.direction === "right" ? 1 : -1);
  const start = () => (state.direction === "right" ? deck[0] : deck[1]);
  const travel = () => deck[1] - deck[0] + lengthOf();
  const edited = () => !Rolling.sameAxles(state.vehicle, facts.vehicles[state.base]);

  /* --- what changes the state --- */

  function chooseBase(index) {
    state.base = index;
    setVehicle(Rolling.copyOf(facts.vehicles[index]));
    const levels = facts.vehicles[index].levels;
    $("living-level").replaceChildren(...levels.map((l, i) => html("option", l.name, { value: String(i) })));
    state.level = facts.vehicles[index].postLevel;
    $("living-level").value = String(state.level);
    $("living-level-label").hidden = levels.length < 2;
    Editor.show(form, facts, state.vehicle);
    change();
  }

  function setVehicle(vehicle) {
    state.vehicle = vehicle;
    state.gaps = vehicle.gaps.map((g) => g[0]);
    state.front = Math.min(Math.max(state.front, deck[0]), deck[1]);
    computed = Rolling.peaksOf(facts, vehicle);
    const share = Math.max(...vehicle.shares.map((s) => s ?? 0));
    const sizes = computed.map((peak) => (peak === null ? 0 : share * Math.max(...[peak.tension, peak.compression].map((p) => Math.abs(p?.force ?? 0)))));
    most = Math.max(1e-9, ...sizes);
    Elevation.setNumbered(elevation, sizes);
  }

  function change() {
    peaks = edited() ? computed : Rolling.withTold(facts, state.vehicle, computed, state.truss);
    rating = edited() ? Rolling.ratingOf(facts, state.vehicle, computed, state.level) : Rolling.tableOf(facts, state.vehicle, state.level);
    Members.showPeaks(rows, facts, roll(), peaks, rating);
    $("living-verdict").replaceChildren(...Members.verdict(facts, state.vehicle, edited(), peaks, rating, state.level).map((text) => html("p", text)));
    $("living-slider").max = String(Math.ceil((travel() / facts.length.metres) * 100) / 100);
    draw();
  }

  function chooseMember(m) {
    state.member = m;
    $("living-member").value = String(m);
    Members.choose(rows, m);
    Line.setMember(line, facts, elevation.at, m);
    draw();
  }

  function place(front, approach = 0) {
    state.front = front;
    state.approach = approach;
    draw();
  }

  function jump(sense) {
    const peak = peaks[state.member]?.[sense] ?? null;
    if (peak === null) {
      return;
    }
    state.direction = peak.direction;
    state.gaps = peak.gaps;
    document.querySelector(`input[name=living-direction][value=${peak.direction}]`).checked = true;
    $("living-slider").max = String(Math.ceil((travel() / facts.length.metres) * 100) / 100);
    place(peak.station, peak.approach);
  }

  /* --- drawing, once a frame --- */

  function draw() {
    if (begun && !waiting) {
      waiting = true;
      requestAnimationFrame(() => {
        waiting = false;
        show();
      });
    }
  }

  function show() {
    const axles = Rolling.axlesOf(roll());
    const { slack, forces: found } = Rolling.forcesAt(facts, roll());
    const forces = found.map((force, m) => force ?? Rolling.senses.map((s) => peaks[m]?.[s] ?? null).find((p) => p?.told && Rolling.standsAt(roll(), p))?.force ?? null);
    const looks = Elevation.looksOf(elevation, forces, most);
    Elevation.show(elevation, looks, state.member, state.vehicle.loads, axles, state.direction);
    Line.showAxles(line, facts, roll(), axles);
    $("living-slider").value = String((forward() * (state.front - start())) / facts.length.metres);
    if (isTimeForWords()) {
      Elevation.showNumbers(elevation, looks, state.member, axles);
      showWords(axles, forces, slack);
    }
  }

  /* Words, and numbers by the dozen, cost a browser more than strokes, and nobody reads them faster: ten times a second while it rolls, and at once where it rests. */
  function isTimeForWords() {
    const now = performance.now();
    clearTimeout(resting);
    if (now - told >= TOLD_EVERY) {
      told = now;
      return true;
    }
    resting = setTimeout(draw, TOLD_EVERY);
    return false;
  }

  function showWords(axles, forces, slack) {
    if (opened("living-sum")) {
      Line.tabulate($("living-sum"), facts, roll(), axles, state.member);
    }
    if (opened("living-members")) {
      Members.showNow(rows, facts, forces);
    }
    showCard(forces, slack);
    const at = `${length(facts, state.front)} ${facts.length.symbol}`;
    Figures.say($("living-at"), at);
    $("living-slider").setAttribute("aria-valuetext", `front axle at ${at}, ${spoken(forces[state.member])} in ${short(facts.members[state.member].name, 30)}`);
  }

  /* A table that is folded away is filled when it is opened. */
  const opened = (id) => $(id).closest("details").open;

  const spoken = (value) => (value === null ? "force not available here" : `${force(facts, Math.abs(value))} ${facts.force.symbol}${value === 0 ? "" : value > 0 ? " tension" : " compression"}`);

  function showCard(forces, slack) {
    const card = Members.card(facts, roll(), peaks, rating, forces, state.member);
    Figures.say($("living-card-title"), card.title);
    card.lines.forEach(([what, value], i) => {
      const entry = $("living-card").children[i] ?? $("living-card").appendChild(entryOf(what));
      Figures.say(entry.lastChild, value);
    });
    for (const sense of Rolling.senses) {
      $(`living-jump-${sense}`).disabled = (peaks[state.member]?.[sense] ?? null) === null;
    }
    Figures.say($("living-rods"), facts.members[state.member].rods ? "Which rods pull changes with the load: this line is that of the rods that pull under the dead load alone." : "");
    Figures.say($("living-slack"), slack < 0 ? "" : `${facts.members[slack].name} only pulls and would be slack with the vehicle here: forces are not available at this place.`);
  }

  function entryOf(what) {
    const entry = html("div");
    entry.append(html("dt", what), html("dd"));
    return entry;
  }

  /* --- the slider: a thumb is drawn to where an axle stands on a panel point, keys go by steps and from turn to turn --- */

  function fromSlider() {
    const there = Number($("living-slider").value) * facts.length.metres;
    const front = start() + forward() * there;
    const near = Peaks.turns(facts.stations, state.gaps, state.direction).find((t) => Math.abs(t - front) < travel() / 400);
    place(near ?? front);
  }

  function byKey(event) {
    const step = facts.length.metres < 0.5 ? 0.5 * facts.length.metres : 0.1;
    const turns = Peaks.turns(facts.stations, state.gaps, state.direction);
    const ahead = state.direction === "right" ? turns : [...turns].reverse();
    const done = (x) => forward() * (x - state.front);
    const to = {
      ArrowRight: () => state.front + step,
      ArrowUp: () => state.front + step,
      ArrowLeft: () => state.front - step,
      ArrowDown: () => state.front - step,
      PageUp: () => ahead.find((x) => done(x) > 1e-6),
      PageDown: () => [...ahead].reverse().find((x) => done(x) < -1e-6),
      Home: () => start(),
      End: () => start() + forward() * travel(),
    }[event.key];
    if (to !== undefined) {
      event.preventDefault();
      const limits = [start(), start() + forward() * travel()].sort((a, b) => a - b);
      place(Math.min(limits[1], Math.max(limits[0], to() ?? state.front)));
    }
  }

  /* --- the editor --- */

  function fromEditor() {
    const read = Editor.read(form, facts);
    if (read !== null) {
      const known = facts.vehicles[state.base];
      const same = Rolling.sameAxles({ loads: read.loads.map(round), gaps: read.gaps.map((g) => g.map(round)) }, { loads: known.loads.map(round), gaps: known.gaps.map((g) => g.map(round)) });
      setVehicle({ ...Rolling.copyOf(state.vehicle), ...(same ? { loads: [...known.loads], gaps: known.gaps.map((g) => [...g]) } : read) });
      change();
    }
  }

  const round = (value) => Number(value.toPrecision(8));

  function withAxles(vehicle) {
    setVehicle(vehicle);
    Editor.show(form, facts, vehicle);
    change();
  }

  /* --- begin --- */

  $("living-vehicle").addEventListener("change", (event) => chooseBase(Number(event.target.value)));
  $("living-level").addEventListener("change", (event) => {
    state.level = Number(event.target.value);
    change();
  });
  $("living-truss").addEventListener("change", (event) => {
    state.truss = Number(event.target.value);
    change();
  });
  $("living-member").addEventListener("change", (event) => chooseMember(Number(event.target.value)));
  for (const radio of document.querySelectorAll("input[name=living-direction]")) {
    radio.addEventListener("change", () => {
      state.direction = radio.value;
      place(start() + forward() * Math.min(travel(), lengthOf()));
    });
  }
  $("living-slider").addEventListener("input", fromSlider);
  $("living-slider").addEventListener("keydown", byKey);
  for (const sense of Rolling.senses) {
    $(`living-jump-${sense}`).addEventListener("click", () => jump(sense));
  }
  form.rows.addEventListener("input", fromEditor);
  $("living-add").addEventListener("click", () => withAxles(Editor.added(state.vehicle)));
  $("living-remove").addEventListener("click", () => withAxles(Editor.removed(state.vehicle)));
  $("living-reset").addEventListener("click", () => chooseBase(state.base));
  for (const fold of $("living").querySelectorAll("details")) {
    fold.addEventListener("toggle", draw);
  }
  $("living").classList.add("ready");

  state.truss = facts.begin.truss;
  state.member = facts.begin.member;
  state.base = facts.begin.vehicle;
  $("living-vehicle").value = String(state.base);
  $("living-truss").value = String(state.truss);
  begun = true;
  chooseBase(state.base);
  chooseMember(state.member);
  jump(facts.begin.sense);
})();
